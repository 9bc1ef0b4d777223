/** The numbers of a figure with their leaders, drawn over it; each is a link to its line in the list. */
import { type Html, html } from "../html.ts";
import { hit, type PlacedItem, type Places, ring } from "./places.ts";

/** `rowOf` gives the id of an item's line, `nameOf` what it is called. */
export function numbers(
  { width, height, items }: Places,
  rowOf: (number: number) => string,
  nameOf: (number: number) => string,
): Html {
  return html`<svg class="item-numbers" viewBox="0 0 ${width} ${short(height)}" role="group" aria-label="Item references">
${items.map(leader)}${items.map((placed) => number(placed, rowOf(placed.item.number), nameOf(placed.item.number)))}</svg>`;
}

/** ISO 128-22: a leader ends in a dot within the outline of what it leads to. */
function leader({ x, y, endX, endY }: PlacedItem): Html {
  const line = `M${short(x)} ${short(y)}L${short(endX)} ${short(endY)}`;
  return html`<path class="item-halo" d="${line}"/><path class="item-leader" d="${line}"/><circle class="item-end" cx="${short(endX)}" cy="${short(endY)}" r="3"/>
`;
}

const number = ({ item, x, y }: PlacedItem, row: string, name: string): Html =>
  html`<a href="#${row}" data-item="${item.number}" aria-label="${item.number} ${name}"><circle class="item-hit" cx="${short(x)}" cy="${short(y)}" r="${hit}"/><circle class="item-ring" cx="${short(x)}" cy="${short(y)}" r="${ring}"/><text x="${short(x)}" y="${short(y)}" dy="0.35em">${item.number}</text></a>
`;

const short = (value: number): number => Math.round(value * 10) / 10;
