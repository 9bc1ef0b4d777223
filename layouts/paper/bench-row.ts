/** A step of the bench sheet: its number, its warnings, what is done, room for what is noted, a box. */

import type { Tray } from "../../src/engine/procedure/tray.ts";
import { t } from "../../src/engine/words.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { acts } from "../components/acts.ts";
import { box } from "../components/box.ts";
import { type Line, line, lines } from "../components/lines.ts";
import { worn } from "../components/protection.ts";
import { hazardsNamed, warningWords } from "../components/safety-message.ts";
import { purposeWords } from "../components/step-supplies.ts";
import { type Html, html, join } from "../html.ts";
import { traysOf } from "../tray/account.ts";
import { capital, duration, sentence } from "../words.ts";
import { blank } from "./blanks.ts";

export interface RowPlace {
  /** The tray before the step. */
  readonly before: Tray;
  readonly numbers: ReadonlyMap<string, number>;
}

export interface RowSource {
  readonly view: ModuleView;
  readonly book: Book;
}

export function rowPlaces(view: ModuleView): Map<string, RowPlace> {
  const { steps } = view;
  const trays = traysOf(view);
  const numbers = new Map(steps.map(({ step, number }) => [step.id, number]));
  return new Map(steps.map(({ step, number }) => [step.id, { before: trays[number - 1]!, numbers }]));
}

export function benchRow(view: StepView, { before, numbers }: RowPlace, source: RowSource): Html {
  const { step, number } = view;
  return html`<li class="bench-row" id="${step.id}">
<b class="row-number">${number}</b>
<div class="row-text">
${warnings(view, source.book)}<p class="row-title"><b>${step.title}</b>${marks(view)}</p>
${lines(guards(view, source))}${acts(step, before, source.view.module.procedure)}${lines([...notes(view, numbers), check(view)])}${step.wait > 0 ? html`<p>Then wait ${duration(step.wait)}.</p>\n` : undefined}</div>
<i class="row-box" aria-hidden="true"></i>
</li>
`;
}

/** Signal words with the names of the hazards: what each means stands at the head of the sheet. */
function warnings({ step }: StepView, book: Book): Html | undefined {
  const words = hazardsNamed(step.hazards, book).map(warningWords);
  return words.length === 0 ? undefined : html`<p class="row-warnings">${join(words, " ")}</p>\n`;
}

function marks({ step: { time, critical, hotWork } }: StepView): Html | undefined {
  const words = [
    time > 0 ? duration(time) : undefined,
    critical ? html`<strong>critical</strong>` : undefined,
    hotWork ? html`<strong>hot work</strong>` : undefined,
  ].filter((each) => each !== undefined);
  return words.length === 0 ? undefined : html` <small>${join(words, " · ")}</small>`;
}

function guards({ step }: StepView, { book }: RowSource): Line[] {
  const { conditions } = book.site.programme;
  const unknown = step.conditions.map((id) => conditions.get(id)?.name ?? id);
  const substances = step.substances.map(
    (id) => `${book.substances.get(id)?.sheet.title ?? id}${purposeWords(step, id)}`,
  );
  return [
    line(t`Not while unknown`, unknown.join("; "), "never-wear"),
    ...worn(step),
    line(t`With`, substances.join("; ")),
  ];
}

/** What is noted, with a line to write on, and where it is wanted again. */
function notes({ step, recorded }: StepView, numbers: ReadonlyMap<string, number>): Line[] {
  const noted = recorded.map(({ from, text }) => html`${text}, from step ${numbers.get(from.id)} ${blank()}`);
  return [
    { name: t`As noted`, values: noted, kind: "row-notes" },
    {
      name: t`Note`,
      values: step.record.map((text) => html`${capital(text)} ${blank()}`),
      kind: "row-notes",
    },
  ];
}

const check = ({ step }: StepView): Line =>
  line(html`${box}Check`, step.check === undefined ? undefined : sentence(capital(step.check)), "check");
