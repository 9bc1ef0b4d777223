/**
 * The sheet of a mentor who shows the job: a job breakdown, as instruction in the trades has used it since the 1940s
 * (important steps, key points, reasons; from memory), made from checks, teaching fields and reasons of precedence.
 */
import { t } from "../../src/engine/words.ts";
import type { Hazard } from "../../src/model/sheet.ts";
import type { StepView } from "../../src/model/site.ts";
import { box } from "../components/box.ts";
import { hazardsNamed, warningWords } from "../components/safety-message.ts";
import { type Html, html } from "../html.ts";
import { capital, duration, sentence } from "../words.ts";
import { blanks } from "./blanks.ts";
import type { SheetSource } from "./sheet.ts";

/** What makes or breaks a step, and why. */
interface KeyPoint {
  readonly kind: Html | string;
  readonly point: string;
  readonly reason: string | undefined;
}

export function demonstration({ view, book }: SheetSource): Html {
  const met = new Set<string>();
  const rows = view.steps.map((step) => {
    const hazards = hazardsNamed(step.step.hazards, book);
    const fresh = hazards.filter(({ id }) => !met.has(id));
    for (const { id } of fresh) met.add(id);
    return stepRows(step, hazards, keyPoints(step, fresh, view.steps));
  });
  return html`${blanks([t`Mentor`, t`Shown to`, t`Date`])}
<ol class="paper-how">
<li><b>Get ready.</b> Machine, tray, tools and labels lie there; ask what is known already.</li>
<li><b>Show</b> each step once in full. Then again, saying its name and its key points; then again with the reasons.</li>
<li><b>Let them do it:</b> first without words, then saying step, key points and reasons. Mend mistakes at once; stop for safety.</li>
<li><b>Follow up.</b> Say whom to ask, look in often, then less often.</li>
</ol>
<table class="ruled job">
<thead><tr><th scope="col">Important step</th><th scope="col">Key point: what makes or breaks it</th><th scope="col">Reason</th></tr></thead>
${rows}</table>
`;
}

function stepRows({ step, number }: StepView, hazards: readonly Hazard[], points: readonly KeyPoint[]): Html {
  const shown = points.length === 0 ? [undefined] : points;
  const time = step.time > 0 ? html` <small>${duration(step.time)}</small>` : undefined;
  const words = hazards.map((hazard) => html`${warningWords(hazard)} `);
  return html`<tbody>
${shown.map(
  (point, index) =>
    html`<tr>${index > 0 ? undefined : html`<th scope="rowgroup" rowspan="${shown.length}">${words}<span class="job-step"><b>${number}</b> ${step.title}${time}</span> <span class="boxes"><span>${box} shown</span> <span>${box} done</span></span></th>`}${cells(point)}</tr>\n`,
)}</tbody>
`;
}

/** A point without a reason has the room of both. */
function cells(point: KeyPoint | undefined): Html {
  if (point === undefined) return html`<td></td><td></td>`;
  const { kind, point: text, reason } = point;
  const words = html`<b>${kind}</b> ${sentence(capital(text))}`;
  if (reason === undefined) return html`<td colspan="2">${words}</td>`;
  return html`<td>${words}</td><td>${sentence(capital(reason))}</td>`;
}

/** Hazards are told with the step that first meets them. */
function keyPoints({ step }: StepView, fresh: readonly Hazard[], steps: readonly StepView[]): KeyPoint[] {
  const numbers = new Map(steps.map((each) => [each.step.id, each.number]));
  return [
    ...fresh.map(({ title, avoid, consequence }) => ({
      kind: `${title}:`,
      point: avoid[0] ?? "",
      reason: consequence,
    })),
    ...[...step.after].map(([first, { because }]) => ({
      kind: t`Order:`,
      point: t`not before step ${numbers.get(first)!}`,
      reason: because,
    })),
    ...told(t`Feel:`, step.feel),
    ...told(t`Check:`, step.check),
    ...step.mistakes.map(({ mistake, result }) => ({ kind: t`Not:`, point: mistake, reason: result })),
    ...step.ifNot.map((remedy) => ({
      kind: t`If:`,
      point: remedy.sign,
      reason: t`Likely cause: ${sentence(remedy.cause)} ${sentence(capital(remedy.do))}`,
    })),
  ];
}

const told = (kind: string, point: string | undefined): KeyPoint[] =>
  point === undefined ? [] : [{ kind, point, reason: undefined }];
