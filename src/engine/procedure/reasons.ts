import { hasBit } from "./bits.ts";
import type { Graph } from "./graph.ts";
import { shortestPath } from "./paths.ts";

/** How a step is named in a sentence; by default by its id. */
export type NameOf = (step: string) => string;

/**
 * Why a pair of the closure holds, both steps by their place. For a pair of the reduction its own reasons, as given.
 * For any other the reasons along the shortest way through the reduction, each with the two steps that it binds:
 * "lid-off → belt-off: the lid covers the belt". O(pairs from the steps on the way), or of the part between them.
 */
export function reasonsFor(graph: Graph, first: number, then: number, nameOf: NameOf): string[] {
  const { covers, after } = graph.poset;
  if (covers[first]!.includes(then)) return ownReasons(graph, first, then);
  const way = shortestPath(covers, first, then, (place) => hasBit(after, place, then))!;
  const { steps } = graph.precedence;
  return way.slice(1).flatMap((place, index) => {
    const bound = `${nameOf(steps[way[index]!]!)} → ${nameOf(steps[place]!)}`;
    const reasons = ownReasons(graph, way[index]!, place);
    return reasons.length === 0 ? [bound] : reasons.map((reason) => `${bound}: ${reason}`);
  });
}

function ownReasons(graph: Graph, first: number, then: number): string[] {
  const step = graph.precedence.steps[then];
  const given = graph.pairsFrom[first]!.filter((pair) => pair.then === step);
  return [...new Set(given.flatMap((pair) => pair.because))];
}
