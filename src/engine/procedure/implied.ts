/** Explicit precedence that says nothing new, because other pairs lead the same way already. */
import { hasBit } from "./bits.ts";
import { criticalPairs } from "./critical.ts";
import { type Graph, graphOf } from "./graph.ts";
import { shortestPath } from "./paths.ts";
import type { Step } from "./procedure.ts";

export interface Implied {
  /** The step with the `after`, and the earlier one that it names. */
  readonly step: string;
  readonly first: string;
  /** The steps on the way from the one to the other, both with it: three or more. */
  readonly way: readonly string[];
}

/**
 * The pairs of `after` that a longer way through the reduced graph implies. What shows the reduced graph does not show them
 * nor their reasons. A pair that `after` marks as critical is implied only where it would be critical
 * without that mark. O(pairs of after · reduced pairs), and once the graph for each critical one.
 */
export function impliedAfters(graph: Graph, steps: readonly Step[]): Implied[] {
  const { places, poset, precedence } = graph;
  return steps.flatMap((step) =>
    [...step.after].flatMap(([first, { critical }]) => {
      const [from, to] = [places.get(first), places.get(step.id)!];
      if (from === undefined || poset.covers[from]!.includes(to) || !hasBit(poset.after, from, to)) return [];
      if (critical && !staysCritical(graph, first, step.id)) return [];
      const way = shortestPath(poset.covers, from, to, (place) => hasBit(poset.after, place, to))!;
      return [{ step: step.id, first, way: way.map((place) => precedence.steps[place]!) }];
    }),
  );
}

/** Whether a pair is critical by way of others too. */
function staysCritical({ precedence, places }: Graph, first: string, then: string): boolean {
  const others = precedence.pairs.filter((pair) => pair.first !== first || pair.then !== then);
  const { graph } = graphOf({ steps: precedence.steps, pairs: others });
  return graph !== null && hasBit(criticalPairs(graph), places.get(first)!, places.get(then)!);
}
