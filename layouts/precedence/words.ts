/** The precedence graph in words: for each step those that must come before it; then the steps that are free. */
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";
import { counted } from "../words.ts";

export function precedenceWords(view: ModuleView): Html {
  const numbers = new Map(view.steps.map(({ step, number }) => [step.id, number]));
  const bound = view.steps.filter((step) => step.needs.length > 0);
  const firsts = new Set(view.precedence.pairs.map((pair) => pair.first));
  const free = view.steps.filter(({ step, needs }) => needs.length === 0 && !firsts.has(step.id));
  return html`<p>${counted(view.precedence.pairs.length, "pair")} of steps ${view.precedence.pairs.length === 1 ? "is" : "are"} bound directly; the reasons<span class="on-paper"> of the critical ones</span> stand at the steps themselves. “Critical” means that the wrong way round ruins something or hurts someone.</p>
<ul class="precedence-words">
${bound.map((step) => html`<li>${link(step)} comes after ${afterWords(step, numbers)}.</li>\n`)}${freeWords(free)}</ul>`;
}

function afterWords({ needs }: StepView, numbers: ReadonlyMap<string, number>): Html {
  const items = needs.map(
    ({ first, critical }) =>
      html`<a href="#${first}">${numbers.get(first)}</a>${critical ? html` <strong>(critical)</strong>` : undefined}`,
  );
  return items.length < 2 ? html`${items}` : html`${join(items.slice(0, -1), ", ")} and ${items.at(-1)}`;
}

function freeWords(free: readonly StepView[]): Html | undefined {
  if (free.length === 0) return undefined;
  return html`<li>Free, at any time: ${join(free.map(link), ", ")}.</li>\n`;
}

const link = ({ step, number }: StepView) => html`<a href="#${step.id}">${number} ${step.title}</a>`;
