/** A strict partial order over 0..n-1, with its closure as rows of bits and its transitive reduction. */

import { addRow, type BitRows, bitRows, hasBit, setBit } from "./bits.ts";
import { type Arrows, topologicalOrder } from "./topological.ts";

export interface Poset {
  readonly size: number;
  /** One linear extension. */
  readonly order: readonly number[];
  /** The transitive reduction: what comes directly after each element, ascending. */
  readonly covers: Arrows;
  /** Row a holds everything that must come after a. */
  readonly after: BitRows;
  /** Row b holds everything that must come before b. */
  readonly before: BitRows;
}

/**
 * The partial order that arrows (in any number, redundant ones too) generate; null where they close a cycle.
 * O(arrows + reduced arrows · n / 32): the heads of a node are met in topological order, so one that is already
 * reached is redundant and costs nothing more.
 * A. V. Aho, M. R. Garey, J. D. Ullman, "The transitive reduction of a directed graph", SIAM J. Comput. 1 (1972).
 */
export function posetOf(arrows: Arrows): Poset | null {
  const size = arrows.length;
  const order = topologicalOrder(arrows);
  if (order.length < size) return null;
  const after = bitRows(size, size);
  const sorted = headsInOrder(arrows, order);
  const covers: number[][] = Array.from(arrows, () => []);
  for (const node of order.toReversed()) {
    for (const head of sorted[node]!) {
      if (hasBit(after, node, head)) continue;
      covers[node]!.push(head);
      addRow(after, node, after, head);
      setBit(after, node, head);
    }
    covers[node]!.sort((a, b) => a - b);
  }
  return { size, order, covers, after, before: beforeRows(order, covers) };
}

function headsInOrder(arrows: Arrows, order: readonly number[]): number[][] {
  const tails: number[][] = Array.from(arrows, () => []);
  for (const [tail, heads] of arrows.entries()) for (const head of heads) tails[head]!.push(tail);
  const sorted: number[][] = Array.from(arrows, () => []);
  for (const head of order) for (const tail of tails[head]!) sorted[tail]!.push(head);
  return sorted;
}

function beforeRows(order: readonly number[], covers: Arrows): BitRows {
  const before = bitRows(order.length, order.length);
  for (const node of order) {
    for (const head of covers[node]!) {
      addRow(before, head, before, node);
      setBit(before, head, node);
    }
  }
  return before;
}
