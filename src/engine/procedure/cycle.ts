import { shortestPath } from "./paths.ts";
import { type Arrows, topologicalOrder } from "./topological.ts";

/**
 * A cycle as the nodes in the order of its arrows, its least node first, the last pointing back to the first; null
 * where there is none. Short, because a person has to read it: no shorter cycle goes through the node from which it
 * was found. O(nodes + arrows).
 */
export function findCycle(arrows: Arrows): number[] | null {
  const sorted = topologicalOrder(arrows);
  if (sorted.length === arrows.length) return null;
  const left = new Set(arrows.keys());
  for (const node of sorted) left.delete(node);
  const start = nodeOnCycle(arrows, left);
  const cycle = shortestPath(arrows, start, start, () => true)!.slice(1);
  const least = cycle.indexOf(cycle.reduce((a, b) => Math.min(a, b)));
  return [...cycle.slice(least), ...cycle.slice(0, least)];
}

/** Each node that the sort left over has a predecessor among them, so walking backwards ends on a cycle. */
function nodeOnCycle(arrows: Arrows, left: ReadonlySet<number>): number {
  const before = new Map<number, number>();
  for (const node of left) for (const head of arrows[node]!) if (!before.has(head)) before.set(head, node);
  const seen = new Set<number>();
  let [node] = left as Iterable<number> as [number];
  for (; !seen.has(node); node = before.get(node)!) seen.add(node);
  return node;
}
