import { findCycle } from "./cycle.ts";
import type { Precedence } from "./precedence.ts";

/** The most steps that a graph file may have; a graph of that size still answers within seconds. */
export const graphFileStepLimit = 5_000;

/** What can be wrong with a precedence graph from outside. Numbers point into `steps` and `pairs`, from 0. */
export type PrecedenceProblem =
  | { readonly kind: "too-many-steps"; readonly count: number; readonly limit: number }
  | { readonly kind: "duplicate-step"; readonly step: string; readonly at: number; readonly earlier: number }
  | { readonly kind: "unknown-step"; readonly step: string; readonly pair: number }
  | { readonly kind: "self-pair"; readonly step: string; readonly pair: number }
  | {
      readonly kind: "duplicate-pair";
      readonly first: string;
      readonly then: string;
      readonly pair: number;
      readonly earlier: number;
    }
  | { readonly kind: "cycle"; readonly steps: readonly string[] };

/**
 * Everything that is wrong with a graph: too many steps (then nothing else is looked at), steps listed twice, pairs
 * that name no step, or one step twice, or repeat a pair, and one cycle, whole. Without any of these `graphOf` builds
 * it; a repeated pair alone does no harm there. O(steps + pairs).
 */
export function checkPrecedence(precedence: Precedence, limit = graphFileStepLimit): PrecedenceProblem[] {
  const count = precedence.steps.length;
  if (count > limit) return [{ kind: "too-many-steps", count, limit }];
  const problems: PrecedenceProblem[] = [];
  const places = placesOf(precedence.steps, problems);
  const heads = headsOf(precedence, places, problems);
  const cycle = findCycle(heads.map((found) => [...found.keys()]));
  if (cycle !== null) problems.push({ kind: "cycle", steps: cycle.map((place) => precedence.steps[place]!) });
  return problems;
}

function placesOf(steps: readonly string[], problems: PrecedenceProblem[]): Map<string, number> {
  const places = new Map<string, number>();
  for (const [at, step] of steps.entries()) {
    const earlier = places.get(step);
    if (earlier === undefined) places.set(step, at);
    else problems.push({ kind: "duplicate-step", step, at, earlier });
  }
  return places;
}

/** For each step the steps that the sound pairs put after it, with the number of the pair. */
function headsOf(
  precedence: Precedence,
  places: ReadonlyMap<string, number>,
  problems: PrecedenceProblem[],
): Map<number, number>[] {
  const heads = precedence.steps.map(() => new Map<number, number>());
  for (const [pair, { first, then }] of precedence.pairs.entries()) {
    const unknown = [...new Set([first, then])].filter((step) => !places.has(step));
    for (const step of unknown) problems.push({ kind: "unknown-step", step, pair });
    if (unknown.length > 0) continue;
    const earlier = heads[places.get(first)!]!.get(places.get(then)!);
    if (first === then) problems.push({ kind: "self-pair", step: first, pair });
    else if (earlier !== undefined) problems.push({ kind: "duplicate-pair", first, then, pair, earlier });
    else heads[places.get(first)!]!.set(places.get(then)!, pair);
  }
  return heads;
}
