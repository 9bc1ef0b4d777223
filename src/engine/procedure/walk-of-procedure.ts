import type { Procedure } from "./procedure.ts";
import { type Walk, walk } from "./walk.ts";

/** Kept for as long as the procedure is: rules and pages ask for the trays of the written order. */
const known = new WeakMap<Procedure, Walk>();

/** The walk of a procedure as written. */
export function walkOfProcedure(procedure: Procedure): Walk {
  const walked = known.get(procedure) ?? walk(procedure);
  known.set(procedure, walked);
  return walked;
}
