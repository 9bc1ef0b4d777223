import { language, t } from "../words.ts";
import { factorial, multinomial, ratio } from "./big-numbers.ts";
import { widthOf } from "./chains.ts";
import { type Counted, countByDownSets } from "./count-down-sets.ts";
import { countsBefore, type Part, parallelParts, seriesParts } from "./decompose.ts";
import type { Graph } from "./graph.ts";
import { heightOf } from "./layers.ts";
import type { Poset } from "./poset.ts";
import { subPoset } from "./sub-poset.ts";

/** The most down-sets that are gone through, over all parts; it bounds time and memory. */
export const downSetLimit = 2_000_000;

/** The most that are gone through where a thousand modules are counted in one go: some tens of milliseconds. */
export const quickDownSetLimit = 20_000;

export interface OrderCount {
  readonly steps: number;
  /** The most steps no two of which are bound. */
  readonly width: number;
  /** How many steps the longest chain has. */
  readonly height: number;
  /** How many orders are right; null where there are too many down-sets to count them. */
  readonly orders: bigint | null;
  /** The probability that a random order is right; null with `orders`. */
  readonly chance: number | null;
  /** Why `orders` is null, in words. */
  readonly reason: string | null;
}

/**
 * Counts the right orders of a graph exactly, or says why not. O(down-sets · width²), the down-sets being those of
 * the parts that are neither parallel nor in series.
 */
export function countOrders(graph: Graph, limit = downSetLimit): OrderCount {
  const { poset } = graph;
  const counted = countExtensions(poset, limit);
  const measures = { steps: poset.size, width: widthOf(poset), height: heightOf(poset) };
  if (counted === null) return { ...measures, orders: null, chance: null, reason: tooMany(limit) };
  const { orders } = counted;
  return { ...measures, orders, chance: ratio(orders, factorial(poset.size)), reason: null };
}

function tooMany(limit: number): string {
  const most = limit.toLocaleString(language);
  return t`there are more than ${most} sets of steps that can be done first (down-sets), too many to count the orders`;
}

/** Splits again and again; what can be split no further is counted by its down-sets. Null above the limit. */
export function countExtensions(poset: Poset, limit: number): Counted | null {
  const counts = countsBefore(poset);
  const all = [...counts.keys()].sort((a, b) => counts[a]! - counts[b]!);
  const parts: Part[] = [{ elements: all, before: 0 }];
  let orders = 1n;
  let downSets = 0;
  for (let part = parts.pop(); part !== undefined; part = parts.pop()) {
    if (part.elements.length < 2) continue;
    const { merges, smaller } = split(poset, counts, part);
    orders *= merges;
    for (const piece of smaller) parts.push(piece);
    if (smaller.length > 0) continue;
    const counted = countByDownSets(subPoset(poset, part.elements), limit - downSets);
    if (counted === null) return null;
    orders *= counted.orders;
    downSets += counted.downSets;
  }
  return { orders, downSets };
}

/** The parts of a part and in how many ways their orders go together; no parts where it cannot be split. */
function split(poset: Poset, counts: readonly number[], part: Part): { merges: bigint; smaller: Part[] } {
  const series = seriesParts(counts, part);
  if (series.length > 1) return { merges: 1n, smaller: series };
  const parallel = parallelParts(poset.covers, part);
  const merges = multinomial(parallel.map(({ elements }) => elements.length));
  return { merges, smaller: parallel.length > 1 ? parallel : [] };
}
