/** Checks with their limits, as found or as left, with room to write what was found. */
import type { LimitCheck } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";

export function checks(list: readonly LimitCheck[], title: string, found: string): Html | undefined {
  if (list.length === 0) return undefined;
  return html`<h3>${title}</h3>
<table class="ruled checks">
<thead><tr><th scope="col">Check</th><th scope="col">Limit</th><th scope="col" class="found">${found}</th></tr></thead>
<tbody>
${list.map(({ check, limit }) => html`<tr><td>${check}</td><td data-name="Limit">${limit ?? "—"}</td><td class="found"></td></tr>\n`)}</tbody>
</table>
`;
}
