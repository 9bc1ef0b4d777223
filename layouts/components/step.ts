/** One step: its number in the margin, what guards it, what is done, what is checked; beside it the tray. */

import type { Tray } from "../../src/engine/procedure/tray.ts";
import type { TrayAccount } from "../../src/engine/procedure/tray-account.ts";
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { ModuleStep } from "../../src/model/module.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { tray } from "../tray/tray.ts";
import { duration } from "../words.ts";
import { acts } from "./acts.ts";
import { figure, numberedThings } from "./figure.ts";
import { lines } from "./lines.ts";
import { needs } from "./needs.ts";
import { wasted, worn } from "./protection.ts";
import { record, recorded } from "./record.ts";
import { hazardsNamed, safetyMessage, shortSafetyMessage } from "./safety-message.ts";
import { stepSupplies } from "./step-supplies.ts";
import { signs, troubles } from "./teaching.ts";

/** What the steps of one module share. */
export interface StepPage {
  readonly view: ModuleView;
  readonly book: Book;
  readonly from: Address;
  readonly numbers: ReadonlyMap<string, number>;
  /** True where steps are seen one at a time, so that each has to bear its safety messages in full. */
  readonly isApart?: boolean;
}

/** What a step stands on. */
export interface StepPlace {
  /** The tray before the step. */
  readonly before: Tray;
  /** The printed tray after it. */
  readonly account: TrayAccount;
  /** Hazards of the step that no step before it names. */
  readonly fresh: ReadonlySet<string>;
}

export function step(view: StepView, place: StepPlace, page: StepPage): Html {
  const { step, number } = view;
  const { module } = page.view;
  return html`<section class="step" id="${step.id}">
<div class="step-body">
<div class="step-head">
<h3><span class="step-number">${number} </span>${step.title}</h3>
${marks(step)}${needs(view, page.numbers)}${guards(step, place.fresh, page)}${acts(step, place.before, module.procedure)}</div>
${work(view, page)}${lines([...signs(step), ...troubles(step), wasted(step)], "long")}${afterwards(step)}</div>
${tray(place.account, number, { folds: page.isApart, named: numberedThings(page.view) })}
</section>
`;
}

/** Time, and whether a mistake is past mending. */
function marks({ time, critical, hotWork }: ModuleStep): Html | undefined {
  const words = [
    time > 0 ? duration(time) : undefined,
    critical ? html`<strong>Critical: a mistake here ruins or hurts</strong>` : undefined,
    hotWork ? html`<strong>Hot work: nothing that can burn is near or wet</strong>` : undefined,
  ];
  const line = join(words, " · ");
  return line.text === "" ? undefined : html`<p class="marks">${line}</p>\n`;
}

/** Everything that has to be read before the work of the step. */
function guards(step: ModuleStep, fresh: ReadonlySet<string>, { book, from, view, isApart }: StepPage): Html {
  return html`${hazardsNamed(step.hazards, book).map((each) => (isApart ? safetyMessage(each, from) : shortSafetyMessage(each, fresh.has(each.id))))}${gate(step, book)}${lines([...worn(step), ...stepSupplies(step, view.module, book, from)])}`;
}

function gate({ conditions }: ModuleStep, book: Book): Html | undefined {
  if (conditions.length === 0) return undefined;
  const names = conditions.map((id) => book.site.programme.conditions.get(id)?.name ?? id);
  return html`<p class="gate">Not while <a href="#s_conditions">unknown</a>: ${names.join("; ")}</p>
`;
}

function work(view: StepView, page: StepPage): Html {
  const {
    book,
    from,
    numbers,
    view: { module },
  } = page;
  const { step } = view;
  return html`${recorded(view, numbers)}${record(view, numbers)}<div class="prose">${book.prose(step.section, module.path, from)}</div>
${step.figure === undefined ? undefined : figure(step.figure, step.id, page)}`;
}

function afterwards({ wait, stop }: ModuleStep): Html | undefined {
  if (wait === 0 && !stop) return undefined;
  return html`<p class="afterwards">${join([wait > 0 && t`Then wait ${duration(wait)}.`, stop && t`A safe place to leave off.`], " ")}</p>
`;
}
