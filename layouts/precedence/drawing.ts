/** The precedence graph drawn: boxes that lead to their steps, lines that say what must come first. */
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { type Html, html, raw } from "../html.ts";
import { layOut, type PlacedEdge, type Spacing } from "./layout.ts";
import { wrap } from "./wrap.ts";

const spacing: Spacing = { nodeWidth: 176, nodeHeight: 40, gapX: 14, gapY: 30, lineWidth: 6 };
/** Characters of the box's small type that fit on one of its two lines. */
const lineLength = 21;
const margin = 4;

/** Undefined where no two steps are bound. */
export function drawing(view: ModuleView): Html | undefined {
  const layout = layOut(view.precedence, spacing);
  if (layout.nodes.size === 0) return undefined;
  const width = layout.width + 2 * margin;
  const height = layout.height + 2 * margin;
  const boxes = view.steps.flatMap((step) => {
    const at = layout.nodes.get(step.step.id);
    return at === undefined
      ? []
      : [box(step, at.x + margin - spacing.nodeWidth / 2, at.y + margin - spacing.nodeHeight / 2)];
  });
  return html`<div class="drawing" role="group" aria-label="Drawing of what must come before what" tabindex="0">
<svg width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">
${markers}
${layout.edges.map(line)}${boxes}</svg>
</div>`;
}

/** The critical mark is a triangle with an exclamation mark, so that colour and weight are not all that tells. */
const markers = raw(`<defs>
<marker id="s_arrow" viewBox="0 0 8 8" refX="7.5" refY="4" markerWidth="8" markerHeight="8" markerUnits="userSpaceOnUse" orient="90"><path d="M0 .5 8 4 0 7.5z"/></marker>
<marker id="s_alert" class="critical" viewBox="0 0 20 20" refX="10" refY="18.5" markerWidth="20" markerHeight="20" markerUnits="userSpaceOnUse"><path d="M.5 1.5h19L10 18.5z"/><path class="mark" d="M9 3.5h2l-.3 5.5H9.3zM9 10.5h2v2H9z"/></marker>
</defs>`);

/** Relative places, which are alike from line to line, compress better. */
function line({ pair, points }: PlacedEdge): Html {
  const half = spacing.nodeHeight / 2;
  const last = points.length - 1;
  const { gapY, nodeHeight } = spacing;
  let path = `M${points[0]!.x + margin} ${points[0]!.y + margin + half}`;
  for (const [i, { x }] of points.slice(1).entries()) {
    const across = x - points[i]!.x;
    path += across === 0 ? `v${gapY}` : `c0 ${gapY / 2} ${across} ${gapY / 2} ${across} ${gapY}`;
    if (i + 1 < last) path += `v${nodeHeight}`;
  }
  return html`<path${pair.critical ? html` class="critical"` : undefined} d="${path}"/>\n`;
}

/** Spaces stand between the texts, because what a link is called is read from them. */
function box({ step, number }: StepView, x: number, y: number): Html {
  const lines = wrap(step.title, lineLength, 2);
  const isCut = lines.join(" ") !== step.title;
  return html`<a href="#${step.id}" transform="translate(${x} ${y})">${isCut ? html`<title>${number} ${step.title}</title>` : undefined}<rect${step.critical ? html` class="critical"` : undefined} width="176" height="40"/><text class="number" x="17" y="27">${number} </text>${label(lines)}</a>
`;
}

function label([first = "", second]: readonly string[]): Html {
  if (second === undefined) return html`<text x="36" y="24">${first}</text>`;
  return html`<text x="36" y="17">${first} <tspan x="36" dy="14">${second}</tspan></text>`;
}
