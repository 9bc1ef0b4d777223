/** The head of a page that belongs to a module: which module, and what one does here. */
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";

export function taskHead(module: Module, from: Address, title: string): Html {
  return html`<header class="sheet-head">
<p class="sheet-kind"><a href="${linkTo(from, { kind: "module", id: module.id })}">${module.title}</a>, revision ${module.revision}</p>
<h1>${title}</h1>
</header>
`;
}
