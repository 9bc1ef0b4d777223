/** The bench sheet: every step on few lines, to tick off and write on beside the machine. */
import { t } from "../../src/engine/words.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { checks } from "../components/checks.ts";
import { conditions } from "../components/conditions.ts";
import { lines } from "../components/lines.ts";
import { worn } from "../components/protection.ts";
import { hazardIds, hazardsNamed, messageAnchor, safetyMessage } from "../components/safety-message.ts";
import { type Html, html } from "../html.ts";
import { divide } from "../phases.ts";
import { benchRow, type RowPlace, rowPlaces } from "./bench-row.ts";
import { blanks } from "./blanks.ts";
import type { SheetSource } from "./sheet.ts";

export function benchSheet(source: SheetSource): Html {
  const { view, book } = source;
  const { emergency } = book.site.programme;
  return html`${blanks([t`Machine and its number`, t`As found`, t`Worked by`, t`Mentor`, t`Begun on`, t`Done on`])}
<p class="small">For those who have read the operation sheet and were shown the work; it goes before this sheet, and the mentor before both.${emergency === undefined ? undefined : html` <b>In an emergency:</b> ${emergency}`}</p>
${hazards(source)}${conditions(view, book)}${checks(view.module.asFound, t`As found`, t`Found`)}${steps(source)}${checks(view.module.asLeft, t`As left`, t`Left`)}`;
}

function hazards({ view, book, from }: SheetSource): Html {
  return html`${lines(worn(view.module))}<div class="messages">
${hazardsNamed(hazardIds(view), book).map((each) => safetyMessage(each, from, messageAnchor(each.id)))}</div>
`;
}

function steps({ view, book }: SheetSource): Html {
  const places = rowPlaces(view);
  const ends = sessionEnds(view);
  return html`${divide(view).phases.map(
    ({ title, steps }) => html`<h3>${title}</h3>
<ol class="bench-rows">
${steps.map((step): Html => {
  const place: RowPlace = places.get(step.step.id)!;
  return html`${benchRow(step, place, { view, book })}${step.number === view.steps.length ? undefined : stop(step.step.stop, ends.get(step.step.id))}`;
})}</ol>
`,
  )}`;
}

/** Numbers of the sessions by the step with which each ends. */
function sessionEnds({ sessions }: ModuleView): Map<string, number> {
  return new Map(
    (sessions?.sessions ?? []).slice(0, -1).map(({ steps }, index) => [steps.at(-1)!, index + 1]),
  );
}

function stop(isSafe: boolean, session: number | undefined): Html | undefined {
  if (session !== undefined)
    return html`<li class="bench-stop"><b>Safe to leave off.</b> Session ${session} ends here, as planned.</li>\n`;
  return isSafe ? html`<li class="bench-stop"><b>Safe to leave off.</b></li>\n` : undefined;
}
