import { bitRows, clearBit, firstCommon, setBit } from "./bits.ts";
import type { Poset } from "./poset.ts";
import { type Arrows, arrivals } from "./topological.ts";

/**
 * The right order nearest to an answer: again and again the available step that stands earliest in `wanted` (every
 * step once), where a step is available once all that must precede it is done, and a kept step only after the kept one
 * before it. The kept steps thus keep their order; they must be free of conflict with the partial order.
 * O(n²/32 + reduced pairs).
 */
export function fixedOrder(poset: Poset, wanted: readonly number[], kept: readonly number[]): number[] {
  const arrows = withChain(poset.covers, kept);
  const rank = new Int32Array(poset.size);
  for (const [place, step] of wanted.entries()) rank[step] = place;
  const waiting = arrivals(arrows);
  const ready = bitRows(1, poset.size);
  for (const [step, count] of waiting.entries()) if (count === 0) setBit(ready, 0, rank[step]!);
  const fixed: number[] = [];
  for (let next = firstCommon(ready, 0, ready, 0); next >= 0; next = firstCommon(ready, 0, ready, 0)) {
    const step = wanted[next]!;
    clearBit(ready, 0, next);
    fixed.push(step);
    for (const head of arrows[step]!) if (--waiting[head]! === 0) setBit(ready, 0, rank[head]!);
  }
  return fixed;
}

function withChain(covers: Arrows, chain: readonly number[]): Arrows {
  const arrows = covers.slice();
  for (const [place, step] of chain.slice(0, -1).entries()) {
    arrows[step] = [...covers[step]!, chain[place + 1]!];
  }
  return arrows;
}
