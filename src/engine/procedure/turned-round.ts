import type { Swap } from "./swaps.ts";

/** Of pairs that may change places, those that stand the other way round in an order; steps left out of it count for nothing. */
export function turnedRound(swaps: readonly Swap[], order: readonly string[]): Swap[] {
  const places = new Map(order.map((step, place) => [step, place]));
  return swaps.filter(({ first, then }) => places.get(then)! < places.get(first)!);
}
