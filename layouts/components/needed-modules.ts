import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";

/** The modules that have to be signed off first. */
export function neededModules({ needs }: Module, book: Book, from: Address): Html {
  if (needs.length === 0) return html`no other module`;
  return html`${join(
    needs.map((id) => moduleLink(id, book, from)),
    "; ",
  )}, signed off`;
}

/** The module whose closing tray it begins with; undefined where the machine is whole at first. */
export function moduleBefore({ beginsFrom }: Module, book: Book, from: Address): Html | undefined {
  if (beginsFrom === undefined) return undefined;
  return html`where ${moduleLink(beginsFrom, book, from)} has left off: what it leaves off the machine is off`;
}

const moduleLink = (id: string, book: Book, from: Address): Html =>
  html`<a href="${linkTo(from, { kind: "module", id })}">${book.cards.get(id)?.title ?? id}</a>`;
