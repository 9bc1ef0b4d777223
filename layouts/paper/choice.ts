/** What to print and on which paper; shown where the script is there, without which all is printed. */
import { t } from "../../src/engine/words.ts";
import type { Programme } from "../../src/model/programme.ts";
import { attribute, type Html, html } from "../html.ts";

export interface Choosable {
  readonly id: string;
  readonly name: string;
}

const papers = [
  { id: "a4", name: "A4" },
  { id: "letter", name: t`US Letter` },
] as const;

/** Without sheets there is only the paper to choose. */
export function paperChoice(sheets: readonly Choosable[], { units }: Programme): Html {
  const usual = units === "inch" ? "letter" : "a4";
  return html`<div class="paper-choice on-screen" hidden>
${sheets.length < 2 ? undefined : sheetBoxes(sheets)}<fieldset><legend>Paper</legend>
${papers.map(({ id, name }) => html`<label><input type="radio" name="paper" value="${id}"${attribute("checked", id === usual)}> ${name}</label>\n`)}</fieldset>
<div class="actions"><button type="button" class="is-main">Print</button></div>
<p class="paper-none" role="status"></p>
</div>
`;
}

function sheetBoxes(sheets: readonly Choosable[]): Html {
  return html`<fieldset><legend>Print these sheets</legend>
${sheets.map(({ id, name }) => html`<label><input type="checkbox" name="sheet" value="${id}" checked> ${name}</label>\n`)}</fieldset>
`;
}
