/** All steps at a glance, by phase, as a way in. */
import { type Html, html } from "../html.ts";
import type { PhaseOfWork } from "../phases.ts";
import { duration } from "../words.ts";

/** `order` leads to the page that says what of it has to be so. */
export function orderOfWork(phases: readonly PhaseOfWork[], order: string | undefined): Html {
  return html`<nav class="order-of-work" aria-labelledby="s_order">
<h2 id="s_order">Order of work</h2>
${phases.map(
  ({ title, steps }) => html`<div><p>${title}</p>
<ol>
${steps.map(
  ({ step, number }) =>
    html`<li><b>${number}</b> <a href="#${step.id}">${step.title}</a>${step.wait > 0 ? html` <small>wait ${duration(step.wait)}</small>` : undefined}${step.stop ? html` <small>may stop</small>` : undefined}</li>\n`,
)}</ol></div>
`,
)}${order === undefined ? undefined : html`<p class="on-screen"><a href="${order}">What must come before what, and what is free</a></p>\n`}</nav>
`;
}
