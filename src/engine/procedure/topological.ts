/**
 * Topological order by counting predecessors. O(nodes + arrows).
 * A. B. Kahn, "Topological sorting of large networks", Communications of the ACM 5 (1962) 558–562.
 */

/** Arrows of a directed graph over 0..n-1: the heads of those that leave each node. */
export type Arrows = readonly (readonly number[])[];

/** How many arrows arrive at each node. */
export function arrivals(arrows: Arrows): Int32Array {
  const count = new Int32Array(arrows.length);
  for (const heads of arrows) for (const head of heads) count[head]!++;
  return count;
}

/**
 * The nodes so that every arrow points forward, the same list for the same arrows. Where there is a cycle the list is
 * shorter than the graph: the nodes on a cycle, or reached from one, are left out.
 */
export function topologicalOrder(arrows: Arrows): number[] {
  const waiting = arrivals(arrows);
  const order: number[] = [];
  for (let node = 0; node < arrows.length; node++) if (waiting[node] === 0) order.push(node);
  for (let done = 0; done < order.length; done++) {
    for (const head of arrows[order[done]!]!) if (--waiting[head]! === 0) order.push(head);
  }
  return order;
}
