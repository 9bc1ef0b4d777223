/** The roster as one HTML file that needs no other: it reads and prints without script. */
import { type Html, html } from "../../../layouts/html.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import { plainPage } from "../plain-page.ts";
import type { Roster } from "./report.ts";
import { faultWords, partsOf, rosterHead } from "./text.ts";
import { standingWords } from "./words.ts";

export function rosterHtml(roster: Roster): string {
  const title = `Roster: ${rosterHead(roster)}`;
  const faults = faultWords(roster);
  const body = html`${table(roster)}${partsOf(roster).map(
    ({ title: name, lines }) => html`<section><h2>${name}</h2>
<ul>${lines.map((line) => html`<li>${line.trim()}</li>`)}</ul></section>
`,
  )}${faults === "" ? undefined : html`<section><h2>Not in order</h2><pre>${faults}</pre></section>`}
`;
  return plainPage(title, body, style);
}

function table({ summary: { people, modules } }: Roster): Html | undefined {
  if (people.length === 0) return undefined;
  const row = (person: RosterRow): Html => html`<tr><th scope="row">${person.name}</th>${modules.map(
    ({ module }) => {
      const state = person.states.get(module);
      return html`<td>${state === undefined ? "–" : standingWords(state)}</td>`;
    },
  )}</tr>
`;
  return html`<div class="wide"><table>
<thead><tr><th scope="col">Name</th>${modules.map(({ title }) => html`<th scope="col">${title}</th>`)}</tr></thead>
<tbody>
${people.map(row)}</tbody>
</table></div>
`;
}

const style = `h1{font-size:1.4rem}h2{font-size:1.1rem;margin-block:1.5rem .3rem}pre{white-space:pre-wrap;font:inherit}
@media print{body{font-size:.8rem}thead{display:table-header-group}tr,section{break-inside:avoid}}`;
