import { maximumMatching, unmatched } from "./matching.ts";
import type { Poset } from "./poset.ts";

/**
 * The fewest chains that hold every element once, each ascending. O(√n · n²/32).
 * R. P. Dilworth, "A decomposition theorem for partially ordered sets", Annals of Math. 51 (1950); by matching each
 * element with its next in the closure, D. R. Fulkerson, Proc. AMS 7 (1956).
 */
export function chainsOf(poset: Poset): number[][] {
  const next = maximumMatching(poset.after);
  return unmatched(next.right).map((start) => {
    const chain: number[] = [];
    for (let element = start; element >= 0; element = next.left[element]!) chain.push(element);
    return chain;
  });
}

/** How many elements the largest antichain has: as many as the fewest chains (Dilworth). */
export function widthOf(poset: Poset): number {
  return unmatched(maximumMatching(poset.after).right).length;
}
