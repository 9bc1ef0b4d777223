/** Places on a mentor's list of withdrawals for what is about to be signed. */
import { listLength } from "./status-bits.ts";

/**
 * A place that was not used before, by chance, so that neighbours on the list tell nothing of each other. `draw` gives whole
 * numbers below 2^32, each as likely; `listLength` is a power of two, so that their rests are as likely too. Throws a RangeError where the list is
 * full. O(draws), 2 on average for a list that is half full.
 */
export function freshPlace(used: ReadonlySet<number>, draw: () => number): number {
  if (used.size >= listLength) throw new RangeError("the list of withdrawals has no place left");
  for (;;) {
    const place = draw() % listLength;
    if (!used.has(place)) return place;
  }
}
