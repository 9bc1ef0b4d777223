import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { modulePages } from "../module-pages.ts";
import { counted, duration } from "../words.ts";
import { ruledTable } from "./ruled-table.ts";

/** All modules: what each is, what it needs, how long it takes, its pages. */
export function moduleTable(book: Book, from: Address): Html {
  if (book.site.modules.length === 0) return html`<p>No module yet.</p>`;
  return ruledTable<ModuleView>(
    "modules",
    [
      { name: "Module", kind: "head", value: (view) => name(view, from) },
      { name: "Needs", value: (view) => needs(view, book, from) },
      { name: "Takes", value: takes },
      { name: "Pages", value: (view) => pages(view, from) },
    ],
    book.site.modules,
  );
}

function name({ module: { id, title, summary } }: ModuleView, from: Address): Html {
  return html`<a href="${linkTo(from, { kind: "module", id })}">${title}</a> <span class="summary">${summary}</span>`;
}

function needs({ module }: ModuleView, book: Book, from: Address): Html {
  return join(
    module.needs.map(
      (id) =>
        html`<a href="${linkTo(from, { kind: "module", id })}">${book.modules.get(id)?.module.title ?? id}</a>`,
    ),
    "; ",
  );
}

function takes({ steps, handsOn, waits }: ModuleView): Html | undefined {
  if (steps.length === 0) return undefined;
  return join(
    [
      handsOn > 0 && duration(handsOn),
      html`<small>${counted(steps.length, "step")}</small>`,
      waits > 0 && html`<small>${duration(waits)} of waiting</small>`,
    ],
    " ",
  );
}

function pages(view: ModuleView, from: Address): Html {
  const links = modulePages
    .filter(({ has }) => has(view))
    .map(({ kind, name }) => html`<a href="${linkTo(from, { kind, id: view.module.id })}">${name}</a>`);
  return join(links, " ");
}
