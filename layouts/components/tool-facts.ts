import type { Tool } from "../../src/model/sheet.ts";
import { type Html, html } from "../html.ts";
import { sentence } from "../words.ts";

/** What a tool fits, what it is for, how it is looked after. */
export function toolFacts({ drive, uses, care }: Tool): Html | undefined {
  if (drive === undefined && uses.length === 0 && care === undefined) return undefined;
  return html`<dl class="lines facts">
${drive === undefined ? undefined : html`<div><dt>Fits</dt><dd>${drive} drives</dd></div>\n`}${uses.length === 0 ? undefined : html`<div><dt>For</dt>${uses.map((use) => html`<dd>${sentence(use)}</dd>`)}</div>\n`}${care === undefined ? undefined : html`<div><dt>Care</dt><dd>${sentence(care)}</dd></div>\n`}</dl>
`;
}
