import type { Arrows } from "./topological.ts";

/**
 * A shortest way from `from` to `to` along at least one arrow, both ends listed; null where there is none. With
 * `from` equal to `to` it is a shortest cycle through that node. Nodes between must satisfy `through`. Of several
 * ways of one length it is the one whose nodes come first in the order of the arrows, so the same each time.
 * Breadth-first search, O(nodes + arrows) of what satisfies `through`.
 */
export function shortestPath(
  arrows: Arrows,
  from: number,
  to: number,
  through: (node: number) => boolean,
): number[] | null {
  const cameFrom = new Map<number, number>();
  const queue = [from];
  for (const node of queue) {
    for (const head of arrows[node]!) {
      if (head === to) return [...wayBack(cameFrom, from, node), to];
      if (cameFrom.has(head) || head === from || !through(head)) continue;
      cameFrom.set(head, node);
      queue.push(head);
    }
  }
  return null;
}

function wayBack(cameFrom: ReadonlyMap<number, number>, from: number, last: number): number[] {
  const way = [last];
  for (let node = last; node !== from; ) {
    node = cameFrom.get(node)!;
    way.push(node);
  }
  return way.reverse();
}
