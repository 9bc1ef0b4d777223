/** The precedence graph drawn: boxes that lead to their steps, lines that say what must come first, phases as bands. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { attribute, type Html, html, join } from "../html.ts";
import { listed } from "../words.ts";
import { bandTitle } from "./band-title.ts";
import { bandsOf } from "./bands.ts";
import { layOut, type PlacedBand, type Point, type Spacing } from "./layout.ts";
import { markers } from "./marks.ts";
import { linesOf, pathThrough } from "./strokes.ts";
import { wrap } from "./wrap.ts";

const box = { width: 200, height: 44 };
/** Above the first row there is room for the band's title and, below that, for the marks of lines that end there. */
const spacing: Spacing = {
  ...{ nodeWidth: box.width, nodeHeight: box.height, gapX: 14, gapY: 28, lineWidth: 6, most: 4 },
  ...{ bandTop: 50, bandBottom: 16 },
};
/** Characters of the box's small type that fit on one of its two lines. */
const lineLength = 22;
const margin = 6;

/** Each band is a picture of its own, so that on paper a sheet ends between two of them. */
export function drawing(view: ModuleView, from: Address): Html {
  const phases = new Map(view.steps.map(({ step }) => [step.id, step.phase ?? ""]));
  const bands = bandsOf(view.precedence, (step) => phases.get(step)!);
  const layout = layOut(bands, view.precedence.pairs, view.swaps, spacing);
  const strokes = linesOf(layout);
  const width = layout.width + 2 * margin;
  const steps = new Map(view.steps.map((step) => [step.step.id, step]));
  const draw = ({ band, top, height }: PlacedBand, index: number) => html`<div class="band">
${title(bandTitle(band, bands, view.module))}<svg role="group" width="${width}" height="${height}" viewBox="${-margin} ${top} ${width} ${height}">
<title>${stepsIn(band.steps, steps)}</title>
<desc>${leads(band.steps, view, steps)}</desc>
${index === 0 ? markers : undefined}${strokes[index]!.map(({ kind, points }) => html`<path${attribute("class", kind)} d="${pathThrough(points)}"/>\n`)}${band.steps.map((step) => boxAt(layout.nodes.get(step)!, steps.get(step)!, linkTo(from, { kind: "module", id: view.module.id, at: step })))}</svg>
</div>
`;
  return html`<div class="drawing" role="group" aria-label="Drawing of what must come before what" tabindex="0">
<div class="bands">
${layout.bands.map(draw)}</div>
</div>
`;
}

const title = (text: string | undefined): Html | undefined =>
  text === undefined ? undefined : html`<h3>${text}</h3>\n`;

type Steps = ReadonlyMap<string, StepView>;

const numbered = (ids: readonly string[], steps: Steps): string =>
  listed(ids.map((id) => String(steps.get(id)!.number)));

const stepsIn = (ids: readonly string[], steps: Steps): string =>
  `${ids.length === 1 ? t`Step` : t`Steps`} ${numbered(ids, steps)}`;

/** What the lines say that begin at these steps. */
function leads(ids: readonly string[], { precedence }: ModuleView, steps: Steps): Html {
  const sentences = ids.map((id) => {
    const thens = precedence.pairs.filter(({ first }) => first === id).map(({ then }) => then);
    return thens.length > 0 && t`${steps.get(id)!.number} leads to ${numbered(thens, steps)}.`;
  });
  return join(sentences.some(Boolean) ? sentences : [t`No line begins here.`], " ");
}

/** Spaces stand between the texts, because what a link is called is read from them. */
function boxAt({ x, y, half }: Point, { step, number }: StepView, href: string): Html {
  const lines = wrap(step.title, lineLength, 2);
  const name = lines.join(" ") === step.title && !step.critical ? undefined : fullName(step, number);
  return html`<a href="${href}" transform="translate(${x - box.width / 2} ${y - half})">${name}<rect${attribute("class", step.critical && "critical")} width="${box.width}" height="${box.height}"/><text class="number" x="19" y="29">${number} </text>${label(lines)}</a>
`;
}

const fullName = ({ title, critical }: StepView["step"], number: number): Html =>
  html`<title>${number} ${title}${critical ? t` (critical)` : undefined}</title>`;

function label([first = "", second]: readonly string[]): Html {
  if (second === undefined) return html`<text x="40" y="27">${first}</text>`;
  return html`<text x="40" y="19">${first} <tspan x="40" dy="16">${second}</tspan></text>`;
}
