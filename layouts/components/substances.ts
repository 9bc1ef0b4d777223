/** The substances of a module: how much, where, what the label says, and the steps that want each. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { SubstanceUsed } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";
import { labelWord, pictograms } from "./pictogram.ts";
import { stepLinks } from "./step-links.ts";

export function substances(view: ModuleView, book: Book, from: Address): Html | undefined {
  if (view.module.substances.length === 0) return undefined;
  return html`<h3>Substances</h3>
<table class="ruled substances">
<thead><tr><th scope="col">Substance</th><th scope="col">Amount</th><th scope="col">Where</th><th scope="col">On its label</th></tr></thead>
<tbody>
${view.module.substances.map((used) => row(used, view, book, from))}</tbody>
</table>
<p class="small">What the label says is about the substance; the safety messages above are about the work. The supplier’s safety data sheet decides.</p>
`;
}

function row({ use, amount, place }: SubstanceUsed, view: ModuleView, book: Book, from: Address): Html {
  const sheet = book.substances.get(use)?.sheet;
  const using = view.steps.filter(({ step }) => step.substances.includes(use));
  return html`<tr><th scope="row"><a href="${linkTo(from, { kind: "substance", id: use })}">${sheet?.title ?? use}</a> ${stepLinks(using)}</th><td data-name="Amount">${amount ?? "—"}</td><td data-name="Where">${place ?? "—"}</td><td>${sheet === undefined ? undefined : html`${pictograms(sheet.pictograms, from)} ${labelWord(sheet)}`}</td></tr>
`;
}
