/** Tools and substances of one step. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module, ModuleStep } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { pictograms } from "./pictogram.ts";

export function stepSupplies(step: ModuleStep, module: Module, book: Book, from: Address): Html | undefined {
  if (step.tools.length + step.substances.length === 0) return undefined;
  const tool = (id: string) =>
    html`<a href="${linkTo(from, { kind: "tool", id })}">${book.tools.get(id)?.sheet.title ?? id}</a>`;
  return html`<dl class="lines supplies">
${step.tools.length === 0 ? undefined : html`<div><dt>Tools</dt><dd>${join(step.tools.map(tool), ", ")}</dd></div>\n`}${step.substances.map((id) => substance(id, module, book, from))}</dl>
`;
}

function substance(id: string, module: Module, book: Book, from: Address): Html {
  const sheet = book.substances.get(id)?.sheet;
  const used = module.substances.find(({ use }) => use === id);
  return html`<div><dt>Substance</dt><dd><a href="${linkTo(from, { kind: "substance", id })}">${sheet?.title ?? id}</a>${used?.place === undefined ? undefined : `, ${used.place}`} ${sheet === undefined ? undefined : pictograms(sheet.pictograms, from)}</dd></div>
`;
}
