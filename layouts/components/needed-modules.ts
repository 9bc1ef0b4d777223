import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";

/** The modules that have to be signed off first. */
export function neededModules({ needs }: Module, book: Book, from: Address): Html {
  if (needs.length === 0) return html`no other module`;
  const links = needs.map(
    (id) => html`<a href="${linkTo(from, { kind: "module", id })}">${book.cards.get(id)?.title ?? id}</a>`,
  );
  return html`${join(links, "; ")}, signed off`;
}
