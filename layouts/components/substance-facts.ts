import { valueWords } from "../../src/engine/value-words.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Substance } from "../../src/model/sheet.ts";
import type { Book } from "../book.ts";
import { precaution, statement } from "../ghs.ts";
import { type Html, html, join, raw } from "../html.ts";
import { figureWords, formValue, isReckonable } from "../interactive/sums/own-substances.ts";
import { capital, listed, sentence } from "../words.ts";
import { line, lines } from "./lines.ts";
import { labelWord, pictograms } from "./pictogram.ts";

/** What its label says, what to try first, where its data sheet is: the sheet decides. */
export function substanceFacts(substance: Substance, book: Book, from: Address): Html | undefined {
  const { uses, instead, flammable, dataSheet } = substance;
  const label = html`${pictograms(substance.pictograms, from)} ${labelWord(substance)}`;
  return lines(
    [
      line(t`Try first`, instead === undefined ? undefined : sentence(instead)),
      line(t`For`, capital(listed(uses.map(valueWords)))),
      line(t`Flammable`, flammable ? html`<strong>Yes</strong>` : t`No`),
      { name: t`Label`, values: [label, ...substance.statements.map(statement)] },
      { name: t`Precautions`, values: substance.precautions.map(precaution).map(breakable) },
      line(t`Data sheet`, sentence(dataSheet)),
      { name: t`Vapour`, values: vapour(substance, from) },
      line(t`Hazards`, hazardLinks(substance, book, from)),
    ],
    "facts",
  );
}

/** "dust/fume/gas" may go on in the next line behind each stroke. */
const breakable = (text: string): Html => join(text.split(/(?<=\/)/), raw("<wbr>"));

/** Its own figures with their source, and the way to reckon with them. */
function vapour(substance: Substance, from: Address): Html[] {
  const { air } = substance;
  const figures = air === undefined ? undefined : figureWords(air);
  const sums = linkTo(from, { kind: "plain", id: "sums" });
  const query = `vapour.substance=${encodeURIComponent(formValue(substance))}`;
  return [
    ...(air === undefined || figures === ""
      ? []
      : [html`${capital(figures!)}. Source: ${sentence(air.source)}`]),
    ...(isReckonable(substance)
      ? [html`<a class="on-screen" href="${sums}?${query}#vapour">Reckon its vapour in a room</a>`]
      : []),
  ];
}

function hazardLinks({ hazards }: Substance, book: Book, from: Address): Html | undefined {
  if (hazards.length === 0) return undefined;
  const links = hazards.map((id) => {
    const sheet = book.hazards.get(id)?.sheet;
    return html`<a href="${linkTo(from, { kind: "hazard", id })}">${sheet?.title ?? id}</a>`;
  });
  return join(links, "; ");
}
