/** The roster as one HTML file that needs no other: it reads and prints without script. */
import { type Html, html, raw } from "../../../layouts/html.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import type { Roster } from "./report.ts";
import { faultWords, partsOf, rosterHead } from "./text.ts";
import { standingWords } from "./words.ts";

export function rosterHtml(roster: Roster): string {
  const title = `Roster: ${rosterHead(roster)}`;
  const faults = faultWords(roster);
  return html`<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title>
<style>${raw(style)}</style></head>
<body>
<h1>${title}</h1>
${table(roster)}${partsOf(roster).map(
  ({ title: name, lines }) => html`<section><h2>${name}</h2>
<ul>${lines.map((line) => html`<li>${line.trim()}</li>`)}</ul></section>
`,
)}${faults === "" ? undefined : html`<section><h2>Not in order</h2><pre>${faults}</pre></section>`}
</body>
</html>
`.text;
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

const style = `body{font:1rem/1.5 "Atkinson Hyperlegible Next",Verdana,sans-serif;margin:2rem auto;max-width:70rem;padding:0 1rem;color:#1d1b16;background:#fbf8f0}
h1{font-size:1.4rem}h2{font-size:1.1rem;margin-block:1.5rem .3rem}.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%}
th,td{border-block:1px solid #8a8371;padding:.35rem .6rem;text-align:start;vertical-align:top;font-variant-numeric:tabular-nums}
ul{margin:0;padding-inline-start:1.1rem}pre{white-space:pre-wrap;font:inherit}
@media print{body{margin:0;background:none;font-size:.8rem}.wide{overflow:visible}thead{display:table-header-group}tr,section{break-inside:avoid}}`;
