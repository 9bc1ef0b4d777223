import { firstCommon, hasBit, setOf } from "./bits.ts";
import { type Graph, placeOf } from "./graph.ts";

/** Whether `first` must come before `then`, directly or by way of others. Throws a RangeError for an unknown step. O(1). */
export function precedes(graph: Graph, first: string, then: string): boolean {
  return hasBit(graph.poset.after, placeOf(graph.places, first), placeOf(graph.places, then));
}

/**
 * Whether the chosen steps may be done in any order at all: a question that asks to arrange them cannot be answered
 * wrongly. Throws a RangeError for an unknown step. O(chosen · steps / 32).
 */
export function anyOrderIsRight(graph: Graph, chosen: Iterable<string>): boolean {
  const { size, after } = graph.poset;
  const places = [...chosen].map((step) => placeOf(graph.places, step));
  const among = setOf(size, places);
  return places.every((place) => firstCommon(after, place, among, 0) < 0);
}
