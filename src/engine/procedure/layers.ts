import type { Poset } from "./poset.ts";

/** For each element the length of the longest chain that ends just before it: 0 for those free to start. O(n + covers). */
export function layersOf(poset: Poset): Int32Array {
  const layer = new Int32Array(poset.size);
  for (const element of poset.order) {
    for (const next of poset.covers[element]!) layer[next] = Math.max(layer[next]!, layer[element]! + 1);
  }
  return layer;
}

/** How many elements the longest chain has. */
export function heightOf(poset: Poset): number {
  return layersOf(poset).reduce((height, layer) => Math.max(height, layer + 1), 0);
}
