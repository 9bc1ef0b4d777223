/** The numbers of a figure with their leaders, drawn over it; each is a link to its line in the list. */
import type { ItemReference } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import type { ItemIds } from "./list.ts";
import { hit, type PlacedItem, type Places, ring } from "./places.ts";

export interface ItemTexts {
  readonly name: string;
  readonly said: string;
}

/** A number is called by its item's name; what it says shows where it is pointed at, without a script too. */
export function numbers(
  { width, height, items }: Places,
  ids: ItemIds,
  textsOf: (item: ItemReference) => ItemTexts,
): Html {
  return html`<svg class="item-numbers" viewBox="0 0 ${width} ${short(height)}" role="group" aria-label="Item references">
${leaders(items)}${items.map((placed) => number(placed, ids, textsOf(placed.item)))}</svg>`;
}

/** ISO 128-22: a leader ends in a dot within the outline of what it leads to. All are drawn as one, to be light on the wire. */
function leaders(items: readonly PlacedItem[]): Html {
  const lines = items.map(({ x, y, endX, endY }) => `M${short(x)} ${short(y)}L${short(endX)} ${short(endY)}`);
  const ends = items.map(({ endX, endY }) => `M${short(endX)} ${short(endY)}h0`);
  return html`<path class="item-halo" d="${lines.join("")}"/><path class="item-leader" d="${lines.join("")}"/><path class="item-ends" d="${ends.join("")}"/>
`;
}

const number = ({ item, x, y }: PlacedItem, ids: ItemIds, { name, said }: ItemTexts): Html =>
  html`<a id="${ids.place(item.number)}" href="#${ids.row(item.number)}" data-item="${item.number}" aria-label="${item.number} ${name}" transform="translate(${short(x)} ${short(y)})"><title>${said}</title><circle class="item-hit" r="${hit}"/><circle class="item-ring" r="${ring}"/><text dy="0.35em">${item.number}</text></a>
`;

const short = (value: number): number => Math.round(value * 10) / 10;
