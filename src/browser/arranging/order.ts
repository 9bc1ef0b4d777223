import { t } from "../../engine/words.ts";

/** Orders of steps, as lists of ids. */

/** The list with the item at `from` moved to `to`. */
export function moveItem<Item>(list: readonly Item[], from: number, to: number): Item[] {
  const rest = list.toSpliced(from, 1);
  return rest.toSpliced(to, 0, list[from]!);
}

/** The list with an item put directly after another one, or first where that is null. Both are in the list. */
export function putAfter<Item>(list: readonly Item[], item: Item, after: Item | null): Item[] {
  const rest = list.filter((each) => each !== item);
  return rest.toSpliced(after === null ? 0 : rest.indexOf(after) + 1, 0, item);
}

/** What was kept, if it is an order of some of these steps. */
export function readSelection(kept: unknown, steps: readonly string[]): string[] | undefined {
  if (!Array.isArray(kept) || new Set(kept).size < kept.length) return undefined;
  const known: ReadonlySet<unknown> = new Set(steps);
  return kept.every((step) => known.has(step)) ? (kept as string[]) : undefined;
}

/** What was kept, if it is an order of exactly these steps. */
export function readOrder(kept: unknown, steps: readonly string[]): string[] | undefined {
  const read = readSelection(kept, steps);
  return read?.length === steps.length ? read : undefined;
}

/** "Unscrew the board: now 3 of 7". `place` counts from 0. */
export function placeWords(title: string, place: number, total: number): string {
  return t`${title}: now ${place + 1} of ${total}`;
}
