/** A precedence graph made ready for questions: its partial order over the steps' places in step order. */

import { findCycle } from "./cycle.ts";
import { type Poset, posetOf } from "./poset.ts";
import type { Pair, Precedence } from "./precedence.ts";

export interface Graph {
  readonly precedence: Precedence;
  /** The place of each step in step order: its element in `poset`. */
  readonly places: ReadonlyMap<string, number>;
  readonly poset: Poset;
  /** The given pairs by the place of their `first`. */
  readonly pairsFrom: readonly (readonly Pair[])[];
}

/** Either the graph, or why there is none: steps each of which must come before the next, and the last before the first. */
export type GraphOrCycle =
  | { readonly graph: Graph; readonly cycle: null }
  | { readonly graph: null; readonly cycle: readonly string[] };

/**
 * Builds the graph. A pair given twice counts once, with the reasons of both. Throws a RangeError for a step listed
 * twice or a pair with a step not listed; where the data come from outside, `checkPrecedence` finds these first.
 * O(pairs + reduced pairs · steps / 32).
 */
export function graphOf(precedence: Precedence): GraphOrCycle {
  const { steps, pairs } = precedence;
  const places = new Map(steps.map((step, place) => [step, place]));
  if (places.size < steps.length) throw new RangeError("a step is listed twice");
  const pairsFrom: Pair[][] = steps.map(() => []);
  for (const pair of pairs) pairsFrom[placeOf(places, pair.first)]!.push(pair);
  const arrows = pairsFrom.map((list) => list.map((pair) => placeOf(places, pair.then)));
  const poset = posetOf(arrows);
  if (poset !== null) return { graph: { precedence, places, poset, pairsFrom }, cycle: null };
  return { graph: null, cycle: findCycle(arrows)!.map((place) => steps[place]!) };
}

/** The place of a step in step order. Throws a RangeError for a step that is not in the graph. */
export function placeOf(places: ReadonlyMap<string, number>, step: string): number {
  const place = places.get(step);
  if (place === undefined) throw new RangeError(`there is no step "${step}" in the precedence graph`);
  return place;
}
