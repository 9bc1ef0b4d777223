/** Splitting a partial order into parts whose orders are independent, again and again, without looking at closures anew. */

import { members } from "./bits.ts";
import type { Poset } from "./poset.ts";
import type { Arrows } from "./topological.ts";

/** Some elements, sorted by how many come before each; `before` come before all of them, from outside the part. */
export interface Part {
  readonly elements: readonly number[];
  readonly before: number;
}

/** How many elements come before each. */
export function countsBefore(poset: Poset): number[] {
  return Array.from(poset.covers, (_, element) => members(poset.before, element).length);
}

/**
 * The connected components of the comparability graph: parts of which no element is related to one of another part.
 * Right orders of the parts may be merged at will. Disjoint sets with path halving, O((elements + covers) · log n).
 * R. E. Tarjan, J. van Leeuwen, "Worst-case analysis of set union algorithms", J. ACM 31 (1984).
 */
export function parallelParts(covers: Arrows, part: Part): Part[] {
  const parent = new Int32Array(covers.length).fill(-1);
  for (const element of part.elements) parent[element] = element;
  for (const element of part.elements) {
    for (const head of covers[element]!) {
      if (parent[head]! >= 0) parent[rootOf(parent, head)] = rootOf(parent, element);
    }
  }
  const groups = new Map<number, number[]>();
  for (const element of part.elements) {
    const root = rootOf(parent, element);
    const group = groups.get(root);
    if (group === undefined) groups.set(root, [element]);
    else group.push(element);
  }
  return [...groups.values()].map((elements) => ({ elements, before: part.before }));
}

function rootOf(parent: Int32Array, start: number): number {
  let node = start;
  while (parent[node] !== node) {
    parent[node] = parent[parent[node]!]!;
    node = parent[node]!;
  }
  return node;
}

/**
 * The parts, each of which must be done as a whole before the next. A part begins at position k when the element there
 * has k elements of the part before it: these can only be the first k, and all that follow have as many or more before
 * them, so those with none of each other before them have all of the first k. O(elements).
 */
export function seriesParts(counts: readonly number[], part: Part): Part[] {
  const { elements, before } = part;
  const starts = [...elements.keys()].filter((k) => counts[elements[k]!]! - before === k);
  return starts.map((start, index) => ({
    elements: elements.slice(start, starts[index + 1]),
    before: before + start,
  }));
}
