/** The gate before work: what to look for on the machine, each answered absent, unknown or stop. */
import { t, tIn } from "../../src/engine/words.ts";
import type { Condition } from "../../src/model/programme.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { capital } from "../words.ts";
import { box } from "./box.ts";

/** Undefined where the module and its steps name none. */
export function conditions({ module, steps }: ModuleView, book: Book): Html | undefined {
  const named = new Set([...module.conditions, ...steps.flatMap(({ step }) => step.conditions)]);
  const known = [...named]
    .map((id) => book.site.programme.conditions.get(id))
    .filter((each) => each !== undefined);
  if (known.length === 0) return undefined;
  return html`<h3 id="s_conditions">Look for these first</h3>
<p>Answer each before any work. <em>Absent</em>: go on. <em>Unknown</em>: do what stands under it, and none of the steps that wait for it. <em>Stop</em>: it is there; your mentor decides how to go on, and without one you don’t.</p>
<ul class="conditions">
${known.map((each) => condition(each, module.conditions.includes(each.id), stepsThatName(each.id, steps)))}</ul>
`;
}

function stepsThatName(id: string, steps: ModuleView["steps"]): ModuleView["steps"] {
  return steps.filter(({ step }) => step.conditions.includes(id));
}

function condition(
  { name, lookFor, ifUnknown }: Condition,
  isWhole: boolean,
  steps: ModuleView["steps"],
): Html {
  return html`<li>
<p class="condition-name"><strong>${name}</strong></p>
<p class="boxes">${[t`absent`, t`unknown`, tIn("an answer that ends work")`stop`].map((answer) => html`<span>${box} ${answer}</span> `)}</p>
<p><b>Look for</b> ${lookFor}</p>
<p><b>If unknown</b> ${capital(ifUnknown)}${waiting(isWhole, steps)}</p>
</li>
`;
}

function waiting(isWhole: boolean, steps: ModuleView["steps"]): Html | undefined {
  if (steps.length > 0) {
    const numbers = steps.map(({ step, number }) => html`<a href="#${step.id}">${number}</a>`);
    return html` <span class="waits">No step ${join(numbers, ", ")} until it is known.</span>`;
  }
  return isWhole ? html` <span class="waits">No step until it is known.</span>` : undefined;
}
