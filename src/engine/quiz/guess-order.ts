/** How many of all orders of some steps need how many moves. */
import { hasBit } from "../procedure/bits.ts";
import { criticalPairs } from "../procedure/critical.ts";
import type { Graph } from "../procedure/graph.ts";

export interface OrdersByMoves {
  readonly moves: number;
  readonly failsCritical: boolean;
  readonly orders: number;
}

/** Longer ones are not asked (a question of more steps is a fault of its author). */
export const longestOrder = 8;

/**
 * Goes through all n! orders. Moves are n less the largest set of steps of which no two are the wrong way round, as in
 * `answerOrder`. Throws a RangeError for more than `longestOrder` steps. O(n! · 2ⁿ), some 10 million operations at most.
 */
export function ordersByMoves(graph: Graph): OrdersByMoves[] {
  const { size } = graph.poset;
  if (size > longestOrder) throw new RangeError(`${size} steps are too many to go through all their orders`);
  const after = masksOf(size, (a, b) => hasBit(graph.poset.after, a, b));
  const pairs = criticalPairs(graph);
  const critical = masksOf(size, (a, b) => hasBit(pairs, a, b));
  const counts = new Map<number, number>();
  const order = Array.from({ length: size }, (_, place) => place);
  do {
    const { moves, failsCritical } = look(order, after, critical);
    const key = moves * 2 + Number(failsCritical);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  } while (toNextOrder(order));
  return [...counts].map(([key, orders]) => ({ moves: key >> 1, failsCritical: key % 2 === 1, orders }));
}

function masksOf(size: number, has: (a: number, b: number) => boolean): number[] {
  return Array.from({ length: size }, (_, a) => {
    let mask = 0;
    for (let b = 0; b < size; b++) if (has(a, b)) mask |= 1 << b;
    return mask;
  });
}

function look(order: readonly number[], after: readonly number[], critical: readonly number[]) {
  let earlier = 0;
  let failsCritical = false;
  // Bit b of conflicts[a]: the two stand the wrong way round, b given earlier.
  const conflicts = new Array<number>(order.length).fill(0);
  for (const step of order) {
    conflicts[step] = earlier & after[step]!;
    if ((earlier & critical[step]!) !== 0) failsCritical = true;
    earlier |= 1 << step;
  }
  return { moves: order.length - largestFree(conflicts), failsCritical };
}

const free = new Uint8Array(1 << longestOrder);

/** The size of the largest set without a conflict: a set is free when it is so without its highest step, and that fits in. */
function largestFree(conflicts: readonly number[]): number {
  const both = conflicts.map((mask, step) =>
    conflicts.reduce((sum, other, by) => ((other >> step) & 1 ? sum | (1 << by) : sum), mask),
  );
  let largest = 0;
  free[0] = 1;
  for (let step = 0, bit = 1; step < conflicts.length; step++, bit <<= 1) {
    for (let rest = 0; rest < bit; rest++) {
      const size = free[rest]! > 0 && (both[step]! & rest) === 0 ? free[rest]! + 1 : 0;
      free[rest | bit] = size;
      if (size - 1 > largest) largest = size - 1;
    }
  }
  return largest;
}

/** The next order in lexicographic order, in place; false after the last. Common practice. */
function toNextOrder(order: number[]): boolean {
  let at = order.length - 2;
  while (at >= 0 && order[at]! >= order[at + 1]!) at--;
  if (at < 0) return false;
  let swap = order.length - 1;
  while (order[swap]! <= order[at]!) swap--;
  [order[at], order[swap]] = [order[swap]!, order[at]!];
  for (let left = at + 1, right = order.length - 1; left < right; left++, right--) {
    [order[left], order[right]] = [order[right]!, order[left]!];
  }
  return true;
}
