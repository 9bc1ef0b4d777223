import { below, sourceOf } from "./random.ts";

/**
 * The list in an order drawn by the seed, every order equally likely. The same list and seed give the same order.
 * R. Durstenfeld, Algorithm 235, Commun. ACM 7 (1964). O(n).
 */
export function shuffle<Item>(list: readonly Item[], seed: string): Item[] {
  const next = sourceOf(seed);
  const drawn = [...list];
  for (let last = drawn.length - 1; last > 0; last--) {
    const chosen = below(last + 1, next);
    [drawn[last], drawn[chosen]] = [drawn[chosen]!, drawn[last]!];
  }
  return drawn;
}
