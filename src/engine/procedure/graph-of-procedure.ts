import { derivePrecedence } from "./derive.ts";
import { type GraphOrCycle, graphOf } from "./graph.ts";
import type { Procedure } from "./procedure.ts";

/** Kept for as long as the procedure is: each question and page of a module asks. */
const known = new WeakMap<Procedure, GraphOrCycle>();

/** The derived precedence graph of a procedure, or the cycle in it. Throws a RangeError where two steps have one id. */
export function graphOfProcedure(procedure: Procedure): GraphOrCycle {
  const graph = known.get(procedure) ?? graphOf(derivePrecedence(procedure));
  known.set(procedure, graph);
  return graph;
}
