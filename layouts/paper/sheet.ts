/** One sheet of the paper page: a section that begins a new page when it is printed, and says of what it is. */
import type { Address } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html } from "../html.ts";

/** What sheets are made from. */
export interface SheetSource {
  readonly view: ModuleView;
  readonly book: Book;
  readonly from: Address;
}

export interface PaperSheet {
  readonly id: string;
  /** What it is called among the choices and at its head. */
  readonly name: string;
  /** Undefined where the module has nothing to put on it. */
  readonly make: (source: SheetSource) => Html | undefined;
}

/** A sheet found by itself still says what it belongs to. */
export function paperSheet({ id, name }: PaperSheet, content: Html, { view, book }: SheetSource): Html {
  return html`<section class="paper-sheet" id="s_${id}" data-sheet="${id}" aria-labelledby="s_${id}-name">
<header class="paper-top">
<h2 id="s_${id}-name">${name}</h2>
<p>${sourceWords(view.module)}<br>${book.site.programme.name}</p>
</header>
${content}</section>
`;
}

/** "Overhaul the spring motor (spring-motor, revision 1)". */
export const sourceWords = ({ title, id, revision }: Module): Html =>
  html`${title} (${id}, revision ${revision})`;
