/** What to wear, what never to wear, and where the waste goes. */
import type { Protection } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";

const rows: readonly { readonly name: string; readonly key: keyof Protection; readonly class: string }[] = [
  { name: "Wear", key: "wear", class: "wear" },
  { name: "Never wear", key: "neverWear", class: "never-wear" },
  { name: "Waste", key: "waste", class: "waste" },
];

/** One line each, those that are empty left out; undefined where all are. */
export function protection(of: Protection, keys: readonly (keyof Protection)[]): Html | undefined {
  const shown = rows.filter(({ key }) => keys.includes(key) && of[key].length > 0);
  if (shown.length === 0) return undefined;
  return html`<dl class="lines">
${shown.map((row) => html`<div class="${row.class}"><dt>${row.name}</dt><dd>${of[row.key].join("; ")}</dd></div>\n`)}</dl>
`;
}
