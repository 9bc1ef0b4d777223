/** What must come before a step, and why; shut, because one reads it only when one wonders. */
import type { StepView } from "../../src/model/site.ts";
import { type Html, html, join } from "../html.ts";
import { capital, sentence } from "../words.ts";

/** `numbers` of all steps, by id. */
export function needs({ needs }: StepView, numbers: ReadonlyMap<string, number>): Html | undefined {
  if (needs.length === 0) return undefined;
  const critical = (is: boolean) => (is ? html` <strong>(critical)</strong>` : undefined);
  return html`<details class="needs"><summary>Comes after ${join(
    needs.map((pair) => html`${numbers.get(pair.first)}${critical(pair.critical)}`),
    ", ",
  )}</summary>
<ul>${needs.map((pair) => html`<li><a href="#${pair.first}">${numbers.get(pair.first)}</a>: ${pair.because.map((reason) => sentence(capital(reason))).join(" ")}</li>\n`)}</ul></details>
`;
}
