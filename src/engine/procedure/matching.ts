/**
 * A largest matching of a bipartite graph, given as rows of bits: row u holds the right nodes joined to left node u.
 * O(√n · n²/32): each phase meets a right node once, because those met are struck out of the rows' common mask.
 * J. E. Hopcroft, R. M. Karp, "An n^(5/2) algorithm for maximum matchings in bipartite graphs", SIAM J. Comput. 2 (1973).
 */

import { type BitRows, clearBit, firstCommon, fullSet, setOf, takeMembers } from "./bits.ts";

/** The partner of each left and of each right node; -1 for none. */
export interface Matching {
  readonly left: Int32Array;
  readonly right: Int32Array;
}

/** The graph has as many right as left nodes. */
export function maximumMatching(joined: BitRows): Matching {
  const left = new Int32Array(joined.rows).fill(-1);
  const right = new Int32Array(joined.rows).fill(-1);
  const matching = { left, right };
  let levels = shortestLevels(joined, matching);
  while (levels !== null) {
    for (const node of unmatched(left)) augment(joined, matching, levels, node);
    levels = shortestLevels(joined, matching);
  }
  return matching;
}

/** The nodes without a partner, ascending. */
export function unmatched(partners: Int32Array): number[] {
  const free: number[] = [];
  partners.forEach((partner, node) => {
    if (partner < 0) free.push(node);
  });
  return free;
}

/** The right nodes by their distance from the unmatched left ones, up to the first unmatched; null where none is reached. */
function shortestLevels(joined: BitRows, matching: Matching): BitRows[] | null {
  const unseen = fullSet(joined.rows);
  const levels: BitRows[] = [];
  let frontier = unmatched(matching.left);
  while (frontier.length > 0) {
    const rights: number[] = [];
    for (const left of frontier) takeMembers(joined, left, unseen, rights);
    levels.push(setOf(joined.rows, rights));
    frontier = rights.map((right) => matching.right[right]!);
    if (frontier.includes(-1)) return levels;
  }
  return null;
}

/** Looks for one path through the levels from an unmatched left node, depth first, and swaps its pairs. */
function augment(joined: BitRows, matching: Matching, levels: readonly BitRows[], start: number): void {
  const lefts = [start];
  const rights: number[] = [];
  while (lefts.length > 0) {
    const level = levels[lefts.length - 1];
    const right = level === undefined ? -1 : firstCommon(joined, lefts.at(-1)!, level, 0);
    if (right < 0) {
      lefts.pop();
      rights.pop();
      continue;
    }
    clearBit(level!, 0, right);
    rights.push(right);
    const partner = matching.right[right]!;
    if (partner < 0) {
      swap(matching, lefts, rights);
      return;
    }
    lefts.push(partner);
  }
}

function swap(matching: Matching, lefts: readonly number[], rights: readonly number[]): void {
  for (const [place, left] of lefts.entries()) {
    matching.left[left] = rights[place]!;
    matching.right[rights[place]!] = left;
  }
}
