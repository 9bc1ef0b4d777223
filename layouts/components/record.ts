/** What is noted before anything is slackened, and the same again where it is wanted. */
import type { StepView } from "../../src/model/site.ts";
import { type Html, html } from "../html.ts";
import { capital } from "../words.ts";

/** With a ruled line to write on after each. */
export function record({ step }: StepView, numbers: ReadonlyMap<string, number>): Html | undefined {
  if (step.record.length === 0) return undefined;
  const wanted = step.recordFor === undefined ? undefined : numbers.get(step.recordFor);
  return html`<div class="record"><p>Note down${wanted === undefined ? undefined : html`; wanted again at step <a href="#${step.recordFor}">${wanted}</a>`}</p>
<ul>${step.record.map((text) => html`<li>${capital(text)}<span class="write"></span></li>`)}</ul></div>
`;
}

export function recorded({ recorded }: StepView, numbers: ReadonlyMap<string, number>): Html | undefined {
  if (recorded.length === 0) return undefined;
  return html`<div class="record"><p>Look up what you noted</p>
<ul>${recorded.map(({ from, text }) => html`<li>Step <a href="#${from.id}">${numbers.get(from.id)}</a>: ${text}<span class="write"></span></li>`)}</ul></div>
`;
}
