import type { Graph } from "./graph.ts";
import type { Pair, Precedence } from "./precedence.ts";
import type { NameOf } from "./reasons.ts";
import { restrict } from "./restrict.ts";

/**
 * `restrict`, with the given pairs among the chosen steps although they are redundant: an order gets the same verdict, and
 * `explainOrder` can tell of each. Pairs stand in step order.
 */
export function restrictForAnswers(graph: Graph, chosen: readonly string[], nameOf: NameOf): Precedence {
  const { steps, pairs } = restrict(graph, chosen, nameOf);
  const among = new Set(steps);
  const keyOf = ({ first, then }: Pair): string => JSON.stringify([first, then]);
  const there = new Set(pairs.map(keyOf));
  const given = graph.precedence.pairs.filter(
    (pair) => among.has(pair.first) && among.has(pair.then) && !there.has(keyOf(pair)),
  );
  const place = new Map(steps.map((step, index) => [step, index]));
  const inStepOrder = (a: Pair, b: Pair) =>
    place.get(a.first)! - place.get(b.first)! || place.get(a.then)! - place.get(b.then)!;
  return { steps, pairs: [...pairs, ...given].sort(inStepOrder) };
}
