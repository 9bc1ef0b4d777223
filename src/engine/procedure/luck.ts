/** How likely a practice is to be put right by lot. */
import { ratio } from "./big-numbers.ts";
import { countExtensions } from "./count-orders.ts";
import { type Graph, placeOf } from "./graph.ts";
import { subPoset } from "./sub-poset.ts";

export interface Luck {
  /** The right orders of the steps asked for. */
  readonly orders: bigint;
  /** All ways to draw as many steps as are asked for, in an order, from those steps and the ones mixed in. */
  readonly lots: bigint;
  readonly chance: number;
}

/** A practice with more down-sets than these has right orders by the thousand, and far more wrong ones. */
const limit = 20_000;

/**
 * The chance that someone who knows how many steps belong to the job, and nothing else, puts it right: right orders among
 * all draws of n of n + m steps in an order, which are (n + m)! / m!. Whoever does not know how many belong is less lucky
 * still. Null where there are too many down-sets to count. Throws a RangeError for an unknown step.
 */
export function luckOf(graph: Graph, asked: readonly string[], mixedIn: number): Luck | null {
  const places = asked.map((step) => placeOf(graph.places, step)).sort((a, b) => a - b);
  const counted = countExtensions(subPoset(graph.poset, places), limit);
  if (counted === null) return null;
  const lots = draws(asked.length, mixedIn);
  return { orders: counted.orders, lots, chance: ratio(counted.orders, lots) };
}

/** The fewest steps mixed in with which the chance is at most `most`; null where `available` are too few. */
export function strayCount(orders: bigint, asked: number, available: number, most: number): number | null {
  for (let count = 0; count <= available; count++)
    if (ratio(orders, draws(asked, count)) <= most) return count;
  return null;
}

/** In how many ways `asked` of `asked + mixedIn` steps can be drawn in an order. */
function draws(asked: number, mixedIn: number): bigint {
  let product = 1n;
  for (let factor = mixedIn + 1; factor <= mixedIn + asked; factor++) product *= BigInt(factor);
  return product;
}
