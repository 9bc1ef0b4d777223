import { chainsOf } from "./chains.ts";
import { DownSetLayer, packingOf } from "./down-set-layer.ts";
import type { Poset } from "./poset.ts";

/** The number of linear extensions, and of the down-sets by which it was found. */
export interface Counted {
  readonly orders: bigint;
  readonly downSets: number;
}

/**
 * Counts the linear extensions of a partial order over its down-sets (sets that hold with an element all that comes
 * before it): the ways to reach a down-set are those to reach it less each of its last elements. Null where it has
 * more than `limit` down-sets. Layers of down-sets of one size are made one from the other, and only two are held.
 * O(down-sets · width²), memory for the two largest layers.
 * G. Brightwell, P. Winkler, "Counting linear extensions", Order 8 (1991), shows that nothing essentially better is known.
 */
export function countByDownSets(poset: Poset, limit: number): Counted | null {
  const chains = chainsOf(poset);
  // The subsets of a largest antichain each generate another down-set.
  if (2 ** chains.length > limit) return null;
  const next = nextOnChains(poset, chains);
  let layer = new DownSetLayer(packingOf(chains.map((chain) => chain.length)));
  layer.addEmpty(1n);
  let downSets = 1;
  for (let size = 0; size < poset.size; size++) {
    layer = largerBy1(layer, next, limit - downSets);
    downSets += layer.size;
    if (downSets > limit) return null;
  }
  return { orders: layer.ways[0]!, downSets };
}

/** What a chain's next element waits for: pairs of a chain and how many of its elements must be there. */
type Needs = readonly { readonly chain: number; readonly height: number }[];

/** For each chain and place on it what its element there needs. */
function nextOnChains(poset: Poset, chains: readonly (readonly number[])[]): readonly (readonly Needs[])[] {
  const needs = new Map<number, { chain: number; height: number }[]>();
  for (const element of poset.order) needs.set(element, []);
  for (const [chain, elements] of chains.entries()) {
    for (const [place, element] of elements.entries()) {
      for (const head of poset.covers[element]!) needs.get(head)!.push({ chain, height: place + 1 });
    }
  }
  return chains.map((elements) => elements.map((element) => needs.get(element)!));
}

/** The down-sets with one element more; stops early once there are more than `limit`. */
function largerBy1(layer: DownSetLayer, next: readonly (readonly Needs[])[], limit: number): DownSetLayer {
  const larger = new DownSetLayer(layer.packing);
  const heights = new Int32Array(next.length);
  for (let index = 0; index < layer.size && larger.size <= limit; index++) {
    layer.readHeights(index, heights);
    for (let chain = 0; chain < next.length; chain++) {
      const needs = next[chain]![heights[chain]!];
      if (needs !== undefined && areMet(needs, heights)) larger.add(layer, index, chain, layer.ways[index]!);
    }
  }
  return larger;
}

function areMet(needs: Needs, heights: Int32Array): boolean {
  for (const { chain, height } of needs) if (heights[chain]! < height) return false;
  return true;
}
