/** Tools and substances of one step. The sheets of the tools are linked from the list at the front. */
import { valueWords } from "../../src/engine/value-words.ts";
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module, ModuleStep } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { type Line, line } from "./lines.ts";
import { pictograms } from "./pictogram.ts";

export function stepSupplies(step: ModuleStep, module: Module, book: Book, from: Address): Line[] {
  const tool = (id: string) => book.tools.get(id)?.sheet.title ?? id;
  return [
    line(t`Tools`, step.tools.length === 0 ? undefined : join(step.tools.map(tool), ", ")),
    { name: t`Substance`, values: step.substances.map((id) => substance(id, step, module, book, from)) },
  ];
}

/** " (cleaning)", where the step says what it takes a substance for. */
export function purposeWords({ purposes }: ModuleStep, id: string): string {
  const purpose = purposes.get(id);
  return purpose === undefined ? "" : ` (${valueWords(purpose)})`;
}

function substance(id: string, step: ModuleStep, module: Module, book: Book, from: Address): Html {
  const sheet = book.substances.get(id)?.sheet;
  const place = module.substances.find(({ use }) => use === id)?.place;
  return html`${sheet === undefined ? undefined : pictograms(sheet.pictograms, from, 32)} <a href="${linkTo(from, { kind: "substance", id })}">${sheet?.title ?? id}</a>${purposeWords(step, id)}${place === undefined ? undefined : `, ${place}`}`;
}
