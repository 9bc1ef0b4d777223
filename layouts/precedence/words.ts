/** The precedence graph in words: for each step, by phase, what must come before it and why; what may be swapped; what is free. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { bandTitle } from "./band-title.ts";
import { bandsOf } from "./bands.ts";

export function precedenceWords(view: ModuleView, from: Address): Html {
  const steps = new Map(view.steps.map((step) => [step.step.id, step]));
  const bands = bandsOf(view.precedence, (id) => steps.get(id)!.step.phase ?? "");
  const firsts = new Set(view.precedence.pairs.map(({ first }) => first));
  const link = (id: string, text: string | number) =>
    html`<a href="${linkTo(from, { kind: "module", id: view.module.id, at: id })}">${text}</a>`;
  const words = (id: string) => stepWords(steps.get(id)!, { view, firsts, steps, link });
  return html`${bands.map((band) => {
    const title = bandTitle(band, bands, view.module);
    return html`${title === undefined ? undefined : html`<h3>${title}</h3>\n`}<ul class="precedence-words">
${band.steps.map(words)}</ul>
`;
  })}`;
}

interface Page {
  readonly view: ModuleView;
  /** Steps that something has to wait for. */
  readonly firsts: ReadonlySet<string>;
  readonly steps: ReadonlyMap<string, StepView>;
  readonly link: (id: string, text: string | number) => Html;
}

function stepWords(step: StepView, page: Page): Html {
  const { id, title, critical } = step.step;
  const swaps = page.view.swaps.filter(({ first, then }) => first === id || then === id);
  const reasons = [
    ...step.needs.map((pair) => {
      const mark = pair.critical ? html` <strong>(critical)</strong>` : undefined;
      return html`<li>after ${numberOf(pair.first, page)}${mark}: ${reasonWords(pair.because)}</li>\n`;
    }),
    ...swaps.map(({ first, then, because }) => {
      const other = numberOf(first === id ? then : first, page);
      return html`<li>may change places with ${other}: ${reasonWords([because])}</li>\n`;
    }),
  ];
  const mark = critical ? html` <strong>(a critical step)</strong>` : undefined;
  const free = step.needs.length > 0 ? undefined : freeWords(page.firsts.has(id));
  return html`<li>${page.link(id, `${step.number} ${title}`)}${mark}${free}${
    reasons.length === 0
      ? undefined
      : html`
<ul>${reasons}</ul>`
  }</li>
`;
}

const freeWords = (isFirst: boolean): string =>
  isFirst ? t`: waits for no other step` : t`: free, at any time`;

const numberOf = (id: string, { link, steps }: Page): Html => link(id, steps.get(id)!.number);

const reasonWords = (because: readonly string[]): Html =>
  join(
    because.map((reason, index) => sentence(index === 0 ? reason : capital(reason))),
    " ",
  );
