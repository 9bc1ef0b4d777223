/** The list of modules, as a route sheet: those that others need stand first. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { moduleTable } from "../components/module-table.ts";
import { frame } from "../frame.ts";
import { html } from "../html.ts";

export function modulesPage(book: Book): string {
  const from: Address = { kind: "plain", id: "modules" };
  return frame({
    address: from,
    title: t`Modules`,
    programme: book.site.programme,
    assets: book.assets,
    description: t`All modules, in an order in which they can be learned.`,
    main: html`<div class="sheet">
<header class="sheet-head"><h1>Modules</h1>
<p class="summary">In an order in which they can be learned: what a module needs stands above it. Stage by stage, with what is signed for, it is on the <a href="${linkTo(from, { kind: "plain", id: "route" })}">route sheet</a>.</p></header>
${moduleTable(book, from)}
</div>`,
  });
}
