/** Performing a procedure a step at a time: what may be done next, and what must come first. */
import { hasBit } from "./bits.ts";
import { type Graph, placeOf } from "./graph.ts";
import type { Pair } from "./precedence.ts";

/** `done`: the step could be done, and is. `refused`: it can't be done yet. `stopped`: a critical pair would be broken. */
export type VerdictKind = "done" | "refused" | "stopped";

export interface Verdict {
  readonly kind: VerdictKind;
  /** The pairs that end at the step and whose first step is not done yet, in step order; none where the step is done. */
  readonly broken: readonly Pair[];
  /**
   * The critical pairs of which the first step is not done yet and the second is the tried step or leads to it, in step
   * order. There are some exactly where the tried step would reverse a critical pair of the closure.
   */
  readonly critical: readonly Pair[];
}

/**
 * Judges the step tried next when exactly the steps of `done` are done. It may be done where all that must come before it
 * is done; a set of done steps that was reached by such tries is closed downwards, so its direct pairs tell.
 * O(pairs). Throws a RangeError for a step that is not in the graph.
 */
export function tryStep(graph: Graph, done: ReadonlySet<string>, step: string): Verdict {
  const open = graph.pairsFrom.flat().filter(({ first }) => !done.has(first));
  const broken = open.filter(({ then }) => then === step);
  const place = placeOf(graph.places, step);
  const leads = ({ then }: Pair): boolean =>
    then === step || hasBit(graph.poset.before, place, placeOf(graph.places, then));
  const critical = open.filter((pair) => pair.critical && leads(pair));
  const kind = critical.length > 0 ? "stopped" : broken.length > 0 ? "refused" : "done";
  return { kind, broken, critical };
}

/** One try of a run: a step that was chosen, and what became of it. */
export interface Try {
  readonly step: string;
  readonly verdict: Verdict;
}

/** The steps done in a run, in the order in which they were done. */
export function doneIn(tries: readonly Try[]): string[] {
  return tries.filter(({ verdict }) => verdict.kind === "done").map(({ step }) => step);
}

/**
 * Judges a run from the steps chosen alone, in the order in which they were chosen; a refused or stopped try changes nothing.
 * Gives undefined where no run can be so: a step that is not in the graph, or was done before. O(tries · pairs).
 */
export function performSteps(graph: Graph, chosen: readonly string[]): Try[] | undefined {
  const done = new Set<string>();
  const tries: Try[] = [];
  for (const step of chosen) {
    if (done.has(step) || !graph.places.has(step)) return undefined;
    const verdict = tryStep(graph, done, step);
    if (verdict.kind === "done") done.add(step);
    tries.push({ step, verdict });
  }
  return tries;
}

/**
 * Of the critical pairs of a stop (`critical`) those that tell most about it: the ones that end at the step itself, or else those whose
 * first step comes after no other one's.
 */
export function tellingPairs(graph: Graph, step: string, critical: readonly Pair[]): Pair[] {
  const own = critical.filter(({ then }) => then === step);
  if (own.length > 0) return own;
  const places = critical.map(({ first }) => placeOf(graph.places, first));
  return critical.filter((_, index) =>
    places.every((other) => !hasBit(graph.poset.before, places[index]!, other)),
  );
}
