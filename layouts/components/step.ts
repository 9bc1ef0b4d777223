/** One step: its number in the margin, what guards it, what is done, what is checked; beside it the tray. */

import type { Tray } from "../../src/engine/procedure/tray.ts";
import type { Address } from "../../src/model/address.ts";
import type { ModuleStep } from "../../src/model/module.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import type { TrayAccount } from "../tray/account.ts";
import { tray } from "../tray/tray.ts";
import { duration } from "../words.ts";
import { acts } from "./acts.ts";
import { figure } from "./figure.ts";
import { needs } from "./needs.ts";
import { protection } from "./protection.ts";
import { record, recorded } from "./record.ts";
import { byGravity, safetyMessage } from "./safety-message.ts";
import { stepSupplies } from "./step-supplies.ts";
import { signs, troubles } from "./teaching.ts";

/** What the steps of one module share. */
export interface StepPage {
  readonly view: ModuleView;
  readonly book: Book;
  readonly from: Address;
  readonly numbers: ReadonlyMap<string, number>;
}

/** `before` is the tray before the step, `account` that after it. */
export function step(view: StepView, before: Tray, account: TrayAccount, page: StepPage): Html {
  const { step, number } = view;
  const { module } = page.view;
  return html`<section class="step" id="${step.id}">
<div class="step-body">
<h3><span class="step-number">${number}</span> ${step.title}</h3>
${marks(step)}${needs(view, page.numbers)}${guards(step, page)}${acts(step, before, module.procedure)}${recorded(view, page.numbers)}${record(view, page.numbers)}<div class="prose">${page.book.prose(step.section, module.path, page.from)}</div>
${step.figure === undefined ? undefined : figure(step.figure, page.book, page.from)}${signs(step)}${troubles(step)}${protection(step, ["waste"])}${afterwards(step)}</div>
${tray(account, number)}
</section>
`;
}

/** Time, and whether a mistake is past mending. */
function marks({ time, critical }: ModuleStep): Html | undefined {
  const words = [
    time > 0 ? duration(time) : undefined,
    critical ? html`<strong>Critical: a mistake here ruins or hurts</strong>` : undefined,
  ];
  const line = join(words, ". ");
  return line.text === "" ? undefined : html`<p class="marks">${line}</p>\n`;
}

/** Everything that has to be read before the work of the step. */
function guards(step: ModuleStep, { book, from, view }: StepPage): Html {
  const hazards = step.hazards.map((id) => book.hazards.get(id)?.sheet).filter((each) => each !== undefined);
  return html`${byGravity(hazards).map((each) => safetyMessage(each, from))}${gate(step, book)}${protection(step, ["wear", "neverWear"])}${stepSupplies(step, view.module, book, from)}`;
}

function gate({ conditions }: ModuleStep, book: Book): Html | undefined {
  if (conditions.length === 0) return undefined;
  const names = conditions.map((id) => book.site.programme.conditions.get(id)?.name ?? id);
  return html`<p class="gate">Only where this was <a href="#_conditions">looked for</a> and is absent: ${names.join("; ")}.</p>
`;
}

function afterwards({ wait, stop }: ModuleStep): Html | undefined {
  if (wait === 0 && !stop) return undefined;
  return html`<p class="afterwards">${join([wait > 0 && `Then wait ${duration(wait)}.`, stop && "A safe place to leave off."], " ")}</p>
`;
}
