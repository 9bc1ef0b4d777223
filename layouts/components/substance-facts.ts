import type { Address } from "../../src/model/address.ts";
import { linkTo } from "../../src/model/address.ts";
import type { Substance } from "../../src/model/sheet.ts";
import type { Book } from "../book.ts";
import { statement } from "../ghs.ts";
import { type Html, html, join } from "../html.ts";
import { capital, listed, sentence } from "../words.ts";
import { labelWord, pictograms } from "./pictogram.ts";

/** What its label says, what to try first, where its data sheet is: the sheet decides. */
export function substanceFacts(substance: Substance, book: Book, from: Address): Html {
  const { uses, instead, flammable, dataSheet } = substance;
  return html`<dl class="lines facts">
${instead === undefined ? undefined : html`<div><dt>Try first</dt><dd>${sentence(instead)}</dd></div>\n`}<div><dt>For</dt><dd>${capital(listed(uses))}</dd></div>
<div><dt>Flammable</dt><dd>${flammable ? html`<strong>Yes</strong>` : "No"}</dd></div>
<div><dt>Label</dt><dd>${pictograms(substance.pictograms, from)} ${labelWord(substance)}</dd>${substance.statements.map((code) => html`<dd>${statement(code)}</dd>`)}</div>
<div><dt>Data sheet</dt><dd>${sentence(dataSheet)}</dd></div>
${hazardLinks(substance, book, from)}</dl>
`;
}

function hazardLinks({ hazards }: Substance, book: Book, from: Address): Html | undefined {
  if (hazards.length === 0) return undefined;
  const links = hazards.map((id) => {
    const sheet = book.hazards.get(id)?.sheet;
    return html`<a href="${linkTo(from, { kind: "hazard", id })}">${sheet?.title ?? id}</a>`;
  });
  return html`<div><dt>Hazards</dt><dd>${join(links, "; ")}</dd></div>
`;
}
