import { hasBit } from "./bits.ts";
import { boundPairs } from "./derive.ts";
import type { Graph } from "./graph.ts";
import type { Procedure, Step } from "./procedure.ts";

/** A pair that a rule binds and the author lets change places: `first` is written first. */
export interface Swap {
  readonly first: string;
  readonly then: string;
  /** Why it may be, in the author's words. */
  readonly because: string;
}

/**
 * The pairs of a procedure that `maySwap` lifts, in step order of `then`, then of `first`. A pair that holds all the same
 * by way of other steps is left out, because no right order turns it round. `graph` is that of the procedure.
 */
export function swapsOf(procedure: Procedure, { poset, places }: Graph): Swap[] {
  const steps = new Map(procedure.steps.map((step) => [step.id, step]));
  return boundPairs(procedure)
    .filter(
      ({ first, then, lifted }) => lifted && !hasBit(poset.after, places.get(first)!, places.get(then)!),
    )
    .map(({ first, then }) => ({ first, then, because: reasonOf(steps.get(first)!, steps.get(then)!) }));
}

/** Either of the two steps may name the other. */
const reasonOf = (first: Step, then: Step): string =>
  then.maySwap.get(first.id) ?? first.maySwap.get(then.id) ?? "";
