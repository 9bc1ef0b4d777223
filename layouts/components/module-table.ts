import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleCard } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type Html, html, join } from "../html.ts";
import { modulePages } from "../module-pages.ts";
import { counted, duration } from "../words.ts";
import { lastNeedsAmong } from "./last-needs.ts";
import { ruledTable } from "./ruled-table.ts";

/** All modules: what each is, its pages, what it needs, how long it takes. */
export function moduleTable(book: Book, from: Address): Html {
  if (book.site.cards.length === 0) return html`<p>No module yet.</p>`;
  const lastNeeds = lastNeedsAmong(book.cards);
  return ruledTable<ModuleCard>(
    "modules",
    [
      { name: t`Module`, kind: "head", value: (card) => name(card, from) },
      { name: t`Needs`, value: (card) => needs(lastNeeds(card), book, from) },
      { name: t`Takes`, value: takes },
    ],
    book.site.cards,
  );
}

function name(card: ModuleCard, from: Address): Html {
  const { id, title, summary } = card;
  return html`<a href="${linkTo(from, { kind: "module", id })}">${title}</a> <span class="summary">${summary}</span>${pages(card, from)}`;
}

function needs(ids: readonly string[], book: Book, from: Address): Html {
  return join(
    ids.map(
      (id) => html`<a href="${linkTo(from, { kind: "module", id })}">${book.cards.get(id)?.title ?? id}</a>`,
    ),
    "; ",
  );
}

function takes({ steps, handsOn, waits }: ModuleCard): Html | undefined {
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

function pages(card: ModuleCard, from: Address): Html | undefined {
  const links = modulePages
    .filter(({ has }) => has(card))
    .map(({ kind, name }) => html`<a href="${linkTo(from, { kind, id: card.id })}">${name}</a>`);
  return links.length === 0 ? undefined : html` <span class="pages">${join(links, " ")}</span>`;
}
