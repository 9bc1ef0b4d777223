import { addRow, type BitRows, bitRows, commonMembers, hasBit, setOf } from "./bits.ts";
import { criticalPairs } from "./critical.ts";
import { type Graph, placeOf } from "./graph.ts";
import type { Pair, Precedence } from "./precedence.ts";
import { type NameOf, reasonsFor } from "./reasons.ts";
import { subPoset } from "./sub-poset.ts";

/**
 * The precedence among some of the steps: the closure restricted to them, then reduced. Steps and pairs stand in step
 * order; `because` is that of `reasonsFor`, which names steps by `nameOf`. A redundant pair is kept only where the
 * reduction alone would lose that it is critical: where a critical pair led to a step left out and on from there. So
 * an order of the chosen steps gets the same verdict from the restricted graph as from the whole one.
 * Choosing all steps reduces the graph. Throws a RangeError for an unknown step.
 */
export function restrict(
  graph: Graph,
  chosen: Iterable<string>,
  nameOf: NameOf = (step) => step,
): Precedence {
  const places = [...new Set(chosen)].map((step) => placeOf(graph.places, step)).sort((a, b) => a - b);
  const { covers } = subPoset(graph.poset, places);
  const critical = criticalPairs(graph);
  const among = setOf(graph.poset.size, places);
  const pairs = places.flatMap((first, index) => {
    const direct = covers[index]!.map((other) => places[other]!);
    const thens = new Set([...direct, ...leastCritical(graph, critical, first, among)]);
    return [...thens]
      .sort((a, b) => a - b)
      .map((then) => closurePair(graph, first, then, hasBit(critical, first, then), nameOf));
  });
  return { steps: places.map((place) => graph.precedence.steps[place]!), pairs };
}

function closurePair(graph: Graph, from: number, to: number, critical: boolean, nameOf: NameOf): Pair {
  const first = graph.precedence.steps[from]!;
  const then = graph.precedence.steps[to]!;
  return { first, then, because: reasonsFor(graph, from, to, nameOf), critical };
}

/** Of the chosen steps bound critically to `first`, those that come after no other one of them. */
function leastCritical(graph: Graph, critical: BitRows, first: number, among: BitRows): number[] {
  const { size, after } = graph.poset;
  const bound = commonMembers(critical, first, among, 0);
  const above = bitRows(1, size);
  for (const then of bound) addRow(above, 0, after, then);
  return bound.filter((then) => !hasBit(above, 0, then));
}
