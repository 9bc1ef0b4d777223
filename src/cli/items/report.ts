/** The report on questions: for people as text, as one HTML file with plots, and as CSV. */
import { type Html, html } from "../../../layouts/html.ts";
import type { Interval } from "../../engine/quiz/statistics/intervals.ts";
import { csvOf } from "../csv.ts";
import { plainPage } from "../plain-page.ts";
import type { ItemReport, Report } from "./items.ts";

const figure = (value: number | null): string => (value === null ? "–" : value.toFixed(2));
const range = (interval: Interval | undefined): string =>
  interval === undefined ? "" : `${interval.low.toFixed(2)} to ${interval.high.toFixed(2)}`;

export function reportWords(report: Report): string {
  const { persons, alpha, incomplete, note, notes, skipped, items } = report;
  const wide = Math.max(8, ...items.map(({ id }) => id.length));
  const rows = items.map(
    (item) =>
      `${item.id.padEnd(wide)}  ${String(item.asked).padStart(7)}  ${figure(item.difficulty).padStart(10)}  ${figure(item.discrimination).padStart(14)}  ${figure(item.alphaWithout).padStart(13)}`,
  );
  return [
    `${persons} sittings; alpha ${figure(alpha)}${incomplete > 0 ? `; ${leftOut(report)}` : ""}`,
    ...(note === undefined ? [] : [note]),
    ...notes,
    ...skipped.map(({ file, why }) => `Left out: ${file}: ${why}`),
    "",
    `${"question".padEnd(wide)}    asked  difficulty  discrimination  alpha without`,
    ...rows,
    "",
    ...items.flatMap(({ id, look }) => look.map((reason) => `Look at ${id}: ${reason}.`)),
    "",
  ].join("\n");
}

const leftOut = ({ incomplete, papers }: Report): string =>
  papers === undefined
    ? `${incomplete} rows left out because a cell is empty (where that is a question that was not asked: --papers)`
    : `${incomplete} rows left out because all cells are empty`;

export function reportCsv({ items }: Report): string {
  const head = [
    "id",
    "asked",
    "difficulty",
    "difficulty_low",
    "difficulty_high",
    "discrimination",
    "discrimination_low",
    "discrimination_high",
    "item_total",
    "alpha_without",
    "look",
  ];
  const rows = items.map((item) => [
    item.id,
    item.asked,
    item.difficulty,
    item.difficultyInterval?.low ?? null,
    item.difficultyInterval?.high ?? null,
    item.discrimination,
    item.discriminationInterval?.low ?? null,
    item.discriminationInterval?.high ?? null,
    item.itemTotal,
    item.alphaWithout,
    item.look.join("; "),
  ]);
  return csvOf([head, ...rows]);
}

/** One file that needs no other; reads and prints without script. */
export function reportHtml(report: Report, title: string): string {
  const { persons, alpha, items, note, notes, skipped, incomplete } = report;
  const body = html`<p>${persons} sittings; alpha ${figure(alpha)}.${incomplete === 0 ? undefined : html` ${leftOut(report)}.`}${note === undefined ? undefined : html` ${note}`}</p>
${notes.map(
  (words) => html`<p>${words}</p>
`,
)}${
  skipped.length === 0
    ? undefined
    : html`<p>Left out:</p>
<ul>${skipped.map(({ file, why }) => html`<li>${file}: ${why}</li>`)}</ul>
`
}<p>Difficulty is the share of points earned by those who were asked; discrimination the correlation with all other questions that they were asked. The bars show intervals of 95 %.</p>
<div class="wide" role="region" aria-label="Questions" tabindex="0"><table>
<thead><tr><th scope="col">Question</th><th scope="col">Asked</th><th scope="col">Difficulty</th><th scope="col">Discrimination</th><th scope="col">Alpha without</th><th scope="col">Look at it because</th></tr></thead>
<tbody>
${items.map(row)}</tbody>
</table></div>
`;
  return plainPage(title, body, style);
}

const row = (item: ItemReport): Html => html`<tr><th scope="row">${item.id}</th><td>${item.asked}</td>
<td>${figure(item.difficulty)}${plot(item.difficulty, item.difficultyInterval, 0, 1)}</td>
<td>${figure(item.discrimination)}${plot(item.discrimination, item.discriminationInterval, -1, 1)}</td>
<td>${figure(item.alphaWithout)}</td><td>${item.look.length === 0 ? undefined : html`<ul>${item.look.map((reason) => html`<li>${reason}</li>`)}</ul>`}</td></tr>
`;

/** A value on its scale, with its interval. */
function plot(
  value: number | null,
  interval: Interval | undefined,
  from: number,
  to: number,
): Html | undefined {
  if (value === null) return undefined;
  const at = (one: number): string => (((one - from) / (to - from)) * 120).toFixed(1);
  const words = interval === undefined ? "" : `, interval ${range(interval)}`;
  return html` <svg viewBox="-4 0 128 16" width="128" height="16" role="img" aria-label="${`${figure(value)} on a scale from ${from} to ${to}${words}`}"><path d="M0 8H120${from < 0 ? `M${at(0)} 2V14` : ""}" class="scale"/>${interval === undefined ? undefined : html`<path d="M${at(interval.low)} 8H${at(interval.high)}" class="interval"/>`}<circle cx="${at(value)}" cy="8" r="3.5"/></svg>`;
}

const style = `svg{vertical-align:middle}.scale{stroke:#8a8371;fill:none}.interval{stroke:#1d1b16;stroke-width:3;fill:none}`;
