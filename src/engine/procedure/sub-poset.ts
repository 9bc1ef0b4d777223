import { commonMembers, setOf } from "./bits.ts";
import { type Poset, posetOf } from "./poset.ts";

/**
 * The order among some elements: element i of the result is `chosen[i]`. What is related only by way of an element
 * left out stays related. O(chosen · n / 32 + pairs of the closure among them).
 */
export function subPoset(poset: Poset, chosen: readonly number[]): Poset {
  const among = setOf(poset.size, chosen);
  const place = new Int32Array(poset.size);
  for (const [index, element] of chosen.entries()) place[element] = index;
  const arrows = chosen.map((element) =>
    commonMembers(poset.after, element, among, 0).map((other) => place[other]!),
  );
  return posetOf(arrows)!;
}
