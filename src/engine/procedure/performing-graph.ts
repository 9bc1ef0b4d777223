import { type Graph, type GraphOrCycle, graphOf } from "./graph.ts";
import { graphOfProcedure } from "./graph-of-procedure.ts";
import type { Pair, Precedence } from "./precedence.ts";
import type { Procedure } from "./procedure.ts";

/**
 * The precedence by which a procedure is performed step by step: the transitive reduction, and every pair that an
 * `after` demands, redundant or not, because its author had a reason that is worth reading. Each pair bears its own reasons.
 * Its closure and its critical closure pairs are those of the whole graph: a critical step makes all its pairs critical,
 * those of the reduction too, and any other critical pair comes of an `after`. Steps must be free of cycles.
 * Throws a RangeError where they are not.
 */
export function performingPrecedence(procedure: Procedure): Precedence {
  const graph = sound(graphOfProcedure(procedure));
  const steps = new Map(procedure.steps.map((step) => [step.id, step]));
  const pairs = graph.pairsFrom.flatMap((list, first) =>
    list.filter((pair) => isCover(graph, first, pair) || steps.get(pair.then)!.after.has(pair.first)),
  );
  return { steps: graph.precedence.steps, pairs };
}

const isCover = ({ poset, places }: Graph, first: number, { then }: Pair): boolean =>
  poset.covers[first]!.includes(places.get(then)!);

function sound({ graph, cycle }: GraphOrCycle): Graph {
  if (graph === null) throw new RangeError(`the steps go round in a circle: ${cycle.join(", ")}`);
  return graph;
}

/** The graph of a precedence that is known to be free of cycles; throws a RangeError where it is not. */
export function performingGraph(precedence: Precedence): Graph {
  return sound(graphOf(precedence));
}
