import { addRow, type BitRows, bitRows, hasBit, setBit } from "./bits.ts";
import type { Graph } from "./graph.ts";

/**
 * The critical pairs of the closure: row a holds b when some pair (a, c) is marked critical and c is b or must come
 * before b. A critical step thus stays critical for all that depends on what it makes safe.
 * O(critical pairs + reduced ones of them · n / 32).
 */
export function criticalPairs(graph: Graph): BitRows {
  const { size, after } = graph.poset;
  const critical = bitRows(size, size);
  for (const [first, pairs] of graph.pairsFrom.entries()) {
    for (const pair of pairs) {
      const then = graph.places.get(pair.then)!;
      if (!pair.critical || hasBit(critical, first, then)) continue;
      addRow(critical, first, after, then);
      setBit(critical, first, then);
    }
  }
  return critical;
}
