/** Where the numbers of a figure stand: in a column at either side, outside the outline, in the order of what they lead to. */
import type { ItemReference } from "../../src/model/module.ts";
import type { Size } from "../../src/model/picture-files.ts";

/** In units of the drawing, which are pixels where the figure is shown as wide as it may be. */
export const pictureWidth = 480;
export const margin = 40;
/** A number's ring; what can be hit is wider, and still 24 px where the figure fills a narrow telephone. */
export const ring = 15;
export const hit = 21;

export interface PlacedItem {
  readonly item: ItemReference;
  /** The middle of its number. */
  readonly x: number;
  readonly y: number;
  /** Where its leader ends, on the picture. */
  readonly endX: number;
  readonly endY: number;
}

export interface Places {
  readonly width: number;
  readonly height: number;
  /** As one goes through them: down the left column, then down the right. */
  readonly items: readonly PlacedItem[];
}

/**
 * After ISO 6433: outside the outline, in columns, each with a leader to its item. No two numbers come nearer than they can be hit;
 * where a side is too low for that, the drawing is higher than the picture, which stands in the middle. O(n log n).
 */
export function placeItems(items: readonly ItemReference[], size: Size): Places {
  const pictureHeight = (pictureWidth * size.height) / size.width;
  const [left, right] = sides(items, Math.floor(pictureHeight / (2 * hit)));
  const height = Math.max(pictureHeight, 2 * hit * Math.max(left.length, right.length));
  const top = (height - pictureHeight) / 2;
  const column = (side: readonly ItemReference[], x: number): PlacedItem[] => {
    const ends = side.map(({ at }) => top + (at[1] / 100) * pictureHeight);
    const rows = spread(ends, height);
    return side.map((item, at) => ({
      ...{ item, x, y: rows[at]! },
      ...{ endX: margin + (item.at[0] / 100) * pictureWidth, endY: ends[at]! },
    }));
  };
  const width = pictureWidth + 2 * margin;
  return { width, height, items: [...column(left, hit), ...column(right, width - hit)] };
}

/** Each at the side that is nearer, as far as there is room; from top to bottom. */
function sides(items: readonly ItemReference[], room: number): [ItemReference[], ItemReference[]] {
  const most = Math.max(room, Math.ceil(items.length / 2));
  const across = items.toSorted((a, b) => a.at[0] - b.at[0]);
  const nearLeft = across.filter(({ at }) => at[0] < 50).length;
  const cut = Math.min(most, Math.max(nearLeft, across.length - most));
  const down = (side: ItemReference[]) => side.sort((a, b) => a.at[1] - b.at[1]);
  return [down(across.slice(0, cut)), down(across.slice(cut))];
}

/** As near to where they are wanted as the distance between them lets, from top to bottom. */
function spread(wanted: readonly number[], height: number): number[] {
  const rows: number[] = [];
  for (const row of wanted) rows.push(Math.max(row, (rows.at(-1) ?? -hit) + 2 * hit));
  for (let at = rows.length - 1, least = height - hit; at >= 0; at--, least = rows[at + 1]! - 2 * hit)
    rows[at] = Math.min(rows[at]!, least);
  return rows;
}
