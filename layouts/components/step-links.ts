/** The numbers of some steps on the page, each a link. */
import type { StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";

export function stepLinks(steps: readonly StepView[]): Html | undefined {
  if (steps.length === 0) return undefined;
  const links = steps.map(({ step, number }) => html`<a href="#${step.id}">${number}</a>`);
  return html`<small class="step-links">${steps.length === 1 ? "step" : "steps"} ${join(links, " ")}</small>`;
}
