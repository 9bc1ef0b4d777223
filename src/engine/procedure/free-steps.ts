import type { Graph } from "./graph.ts";

/** The steps that are bound to no other: they may come first, last or anywhere. In step order. O(reduced pairs). */
export function freeSteps({ poset, precedence }: Graph): string[] {
  const after = new Set(poset.covers.flat());
  return precedence.steps.filter((_, place) => poset.covers[place]!.length === 0 && !after.has(place));
}
