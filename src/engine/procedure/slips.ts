/** A practice on paper: its steps on lettered slips to be sorted by hand, and the key by letters. */
import { countOrders, quickDownSetLimit } from "./count-orders.ts";
import { graphOf } from "./graph.ts";
import type { Pair, Precedence } from "./precedence.ts";
import { startingOrder } from "./starting-order.ts";

export interface Slip {
  /** A, B, … Z, AA, AB, … */
  readonly letter: string;
  readonly step: string;
}

export interface SlipKey {
  /** Letters in one right order: the written one. */
  readonly order: readonly string[];
  /** Letters of the slips that belong to another job. */
  readonly leftOut: readonly string[];
  /** Bound pairs, by letters. */
  readonly pairs: readonly (Pair & { readonly letters: readonly [first: string, then: string] })[];
  /** How many orders are right; null where there are too many to count. */
  readonly orders: bigint | null;
}

export interface Slips {
  /** In the order of their letters, which is not a right one wherever there is a wrong one. */
  readonly slips: readonly Slip[];
  readonly key: SlipKey;
}

/**
 * The same seed gives the same letters, so that a key fits slips that were printed before. `mixedIn` are steps that do not
 * belong to the job. Throws where `precedence` goes round in a circle.
 */
export function slipsOf(precedence: Precedence, mixedIn: readonly string[], seed: string): Slips {
  const { graph } = graphOf(precedence);
  if (graph === null) throw new RangeError("a practice can't go round in a circle");
  const slips = startingOrder(graph, seed, mixedIn).map((step, place) => ({ letter: letterOf(place), step }));
  const letters = new Map(slips.map(({ letter, step }) => [step, letter]));
  const letter = (step: string) => letters.get(step)!;
  return {
    slips,
    key: {
      order: precedence.steps.map(letter),
      leftOut: mixedIn.map(letter).sort(byLetter),
      pairs: precedence.pairs.map((pair) => ({ ...pair, letters: [letter(pair.first), letter(pair.then)] })),
      orders: countOrders(graph, quickDownSetLimit).orders,
    },
  };
}

const alphabet = 26;

/** 0 is A, 25 is Z, 26 is AA. */
export function letterOf(place: number): string {
  const last = String.fromCharCode("A".charCodeAt(0) + (place % alphabet));
  return place < alphabet ? last : letterOf(Math.floor(place / alphabet) - 1) + last;
}

const byLetter = (a: string, b: string) => a.length - b.length || (a < b ? -1 : 1);
