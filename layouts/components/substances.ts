/** The substances of a module: how much, where, what the label says, and the steps that want each. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { SubstanceUsed } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { labelWord, pictograms } from "./pictogram.ts";
import { type Column, ruledTable } from "./ruled-table.ts";
import { stepLinks } from "./step-links.ts";

export function substances(view: ModuleView, book: Book, from: Address): Html | undefined {
  if (view.module.substances.length === 0) return undefined;
  const columns: readonly Column<SubstanceUsed>[] = [
    { name: t`Substance`, kind: "head", value: ({ use }) => name(use, view, book, from) },
    { name: t`Amount`, value: ({ amount }) => amount?.replace(/(?<=\d) /g, "\u00a0") },
    { name: t`Where`, value: ({ place }) => place },
    { name: t`On its label`, value: ({ use }) => label(use, book, from) },
  ];
  return html`<h3>Substances</h3>
${ruledTable("substances", columns, view.module.substances)}<p class="small">What the label says is about the substance; the safety messages above are about the work. The supplier’s safety data sheet decides.</p>
`;
}

function name(id: string, view: ModuleView, book: Book, from: Address): Html {
  const using = view.steps.filter(({ step }) => step.substances.includes(id));
  const title = book.substances.get(id)?.sheet.title ?? id;
  return html`<a href="${linkTo(from, { kind: "substance", id })}">${title}</a> ${stepLinks(using)}`;
}

function label(id: string, book: Book, from: Address): Html | undefined {
  const sheet = book.substances.get(id)?.sheet;
  return sheet === undefined ? undefined : html`${pictograms(sheet.pictograms, from)} ${labelWord(sheet)}`;
}
