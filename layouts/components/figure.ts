/** A figure with its caption, and its item references where it has any. */

import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import type { Figure, ItemReference } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { type ItemIds, itemList, itemName } from "../figure/list.ts";
import { numbers } from "../figure/numbers.ts";
import { placeItems } from "../figure/places.ts";
import { itemSaid } from "../figure/said.ts";
import { type Html, html } from "../html.ts";
import { enlarge, picture } from "./picture.ts";

export interface FigurePage {
  readonly view: ModuleView;
  readonly book: Book;
  readonly from: Address;
}

/** `place` tells the figures of a page apart: the step's id, or "" for the module's own. No heading has ids of these forms. */
export function figure(shown: Figure, place: string, { view, book, from }: FigurePage): Html {
  const caption = shown.caption === undefined ? undefined : html`<figcaption>${shown.caption}</figcaption>`;
  if (shown.items.length === 0)
    return html`<figure class="figure">${picture(shown, book, from)}${enlarge(shown.file, book, from)}${caption}</figure>
`;
  const ids: ItemIds = {
    row: (number) => `i_${place}_${number}`,
    place: (number) => `n_${place}_${number}`,
  };
  return html`<div class="numbered"><figure class="figure">${stage(shown, ids, { view, book, from })}${enlarge(shown.file, book, from, t`Picture without numbers`)}${caption}</figure>
<a class="skip" href="#e_${place}">Past the list</a>
${itemList(shown.items, view, ids)}<span id="e_${place}" tabindex="-1"></span></div>
`;
}

/** The picture with numbers beside it. One that says no size has no place for them, and is shown by itself. */
function stage(shown: Figure, ids: ItemIds, { view, book, from }: FigurePage): Html {
  const size = book.sizeOf(shown.file);
  const image = picture(shown, book, from);
  if (size === undefined)
    return html`${image}${shown.items.map(({ number }) => html`<span id="${ids.place(number)}"></span>`)}`;
  const textsOf = (item: ItemReference) => ({
    name: itemName(item, view.module),
    said: itemSaid(item, view),
  });
  return html`<div class="item-stage">${image}${numbers(placeItems(shown.items, size), ids, textsOf)}</div>
<p class="item-said" aria-hidden="true">Point at a number or press it, and what it is stands here.</p>
`;
}

/** Ids of the things that figures of the module number: their lines in trays bear them too. */
export function numberedThings({ module }: ModuleView): ReadonlySet<string> {
  const figures = [module.figure, ...module.procedure.steps.map((step) => step.figure)];
  return new Set(figures.flatMap((each) => each?.items.flatMap(({ of }) => of ?? []) ?? []));
}
