import { type BitRows, clearBit, firstCommon, setOf } from "./bits.ts";
import { type Break, brokenPairs } from "./broken-pairs.ts";
import { widthOf } from "./chains.ts";
import { criticalPairs } from "./critical.ts";
import { fixedOrder } from "./fixed-order.ts";
import type { Graph } from "./graph.ts";
import { keptSteps } from "./kept-steps.ts";
import type { NameOf } from "./reasons.ts";

/** One step lifted out and put directly after another; `after` null means first. */
export interface Move {
  readonly step: string;
  readonly after: string | null;
}

export interface OrderAnswer {
  /** All steps are there, no others, and no pair is broken. */
  readonly valid: boolean;
  /** The fewest moves that make it right; a step left out and a foreign one count as one each. */
  readonly moves: number;
  /** The most moves that any order of all the steps can need. */
  readonly worst: number;
  /** 1 − moves / worst, at least 0. */
  readonly score: number;
  readonly breaks: readonly Break[];
  /** Moves that turn the answer, once `extra` is taken out, into `fixed`, when made in this order. */
  readonly fix: readonly Move[];
  /** A right order of all the steps with the fewest moved. */
  readonly fixed: readonly string[];
  /** Steps left out, in step order. */
  readonly missing: readonly string[];
  /** What was given and is no step, as given. */
  readonly extra: readonly string[];
  /** A critical pair of the closure is the wrong way round: failed, whatever the score. */
  readonly failedCritical: boolean;
}

/**
 * Judges an order of steps against the graph; the same answer whoever computes it. `nameOf` names steps in the reasons.
 * Throws a RangeError when `given` holds a step twice: see `repeatedSteps`. O(√n · n²/32 + reduced pairs).
 *
 * That moves is n less the largest conflict-free set: what is moved can be put back validly, because the order of the
 * kept steps extends to an order of all; and of two steps in conflict one has to move. The worst is n − width: an
 * antichain has no conflicts, and a right order reversed has a conflict for every pair of the closure.
 */
export function answerOrder(
  graph: Graph,
  given: readonly string[],
  nameOf: NameOf = (step) => step,
): OrderAnswer {
  if (repeatedSteps(given).length > 0) throw new RangeError("a step is given twice");
  const { places, poset, precedence } = graph;
  const known = given.filter((step) => places.has(step)).map((step) => places.get(step)!);
  const extra = given.filter((step) => !places.has(step));
  const missing = missingFrom(poset.size, known);
  const kept = keptSteps(poset, known);
  const fixed = fixedOrder(poset, [...known, ...missing], kept).map((place) => precedence.steps[place]!);
  const critical = criticalPairs(graph);
  const moves = known.length - kept.length + missing.length + extra.length;
  const worst = poset.size - widthOf(poset);
  return {
    valid: moves === 0,
    moves,
    worst,
    score: scoreOf(moves, worst),
    breaks: brokenPairs(graph, known, critical, nameOf),
    fix: movesTo(fixed, new Set(kept.map((place) => precedence.steps[place]!))),
    fixed,
    missing: missing.map((place) => precedence.steps[place]!),
    extra,
    failedCritical: breaksAny(critical, known),
  };
}

/** The steps that an answer holds more than once, each once. An answer with any of these is a wrong call. */
export function repeatedSteps(given: readonly string[]): string[] {
  const once = new Set<string>();
  const repeated = new Set<string>();
  for (const step of given) (once.has(step) ? repeated : once).add(step);
  return [...repeated];
}

function missingFrom(size: number, known: readonly number[]): number[] {
  const there = new Set(known);
  return Array.from({ length: size }, (_, place) => place).filter((place) => !there.has(place));
}

function scoreOf(moves: number, worst: number): number {
  if (worst === 0) return moves === 0 ? 1 : 0;
  return Math.max(0, 1 - moves / worst);
}

function movesTo(fixed: readonly string[], kept: ReadonlySet<string>): Move[] {
  return fixed
    .map((step, index) => ({ step, after: fixed[index - 1] ?? null }))
    .filter(({ step }) => !kept.has(step));
}

function breaksAny(pairs: BitRows, given: readonly number[]): boolean {
  const earlier = setOf(pairs.rows, given);
  return given.toReversed().some((step) => {
    clearBit(earlier, 0, step);
    return firstCommon(pairs, step, earlier, 0) >= 0;
  });
}
