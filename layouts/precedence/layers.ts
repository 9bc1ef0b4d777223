/** Which layer of the drawing each step stands in. */
import type { Precedence } from "../../src/engine/procedure/precedence.ts";

/**
 * Longest path from the first steps; then each step with more after it than before it sinks towards what follows it, so
 * that lines are short. Steps in no pair have no layer. O(steps + pairs).
 */
export function layers({ steps, pairs }: Precedence): Map<string, number> {
  const layer = new Map<string, number>();
  const bound = new Set(pairs.flatMap((pair) => [pair.first, pair.then]));
  const ofThen = groupBy(pairs, (pair) => pair.then);
  const ofFirst = groupBy(pairs, (pair) => pair.first);
  for (const id of steps) {
    if (bound.has(id))
      layer.set(id, Math.max(-1, ...(ofThen.get(id) ?? []).map((pair) => layer.get(pair.first)!)) + 1);
  }
  for (const id of [...layer.keys()].reverse()) {
    const [before, after] = [ofThen.get(id) ?? [], ofFirst.get(id) ?? []];
    if (after.length > before.length)
      layer.set(id, Math.min(...after.map((pair) => layer.get(pair.then)!)) - 1);
  }
  return layer;
}

function groupBy<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return groups;
}
