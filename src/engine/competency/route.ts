/** The route from a first evening to working alone: in which stages modules can be learned. */
import { type Arrows, topologicalOrder } from "../procedure/topological.ts";

/**
 * The ids of the modules by stages: first those that need nothing, then those that need only modules of earlier stages, each as early as
 * it can be, so that a module's stage is the longest way of needs that leads to it. A need that is no key of `needs` counts for nothing.
 * Modules that need themselves round a corner, and those that need them, make one last stage; `check` refuses such content. No stage
 * is empty; ids within a stage stand by their code units, whatever the order given. O(needs + modules × log modules).
 */
export function routeStages(needs: ReadonlyMap<string, readonly string[]>): string[][] {
  const ids = [...needs.keys()].sort();
  const arrows = arrowsToNeeding(ids, needs);
  const order = topologicalOrder(arrows);
  const stage = new Int32Array(ids.length);
  for (const module of order)
    for (const next of arrows[module]!) stage[next] = Math.max(stage[next]!, stage[module]! + 1);
  const last = order.reduce((most, module) => Math.max(most, stage[module]! + 1), 0);
  const sorted = new Set(order);
  const count = sorted.size < ids.length ? last + 1 : last;
  const stages: string[][] = Array.from({ length: count }, () => []);
  for (const [at, id] of ids.entries()) stages[sorted.has(at) ? stage[at]! : last]!.push(id);
  return stages;
}

/** From each module to those that need it. */
function arrowsToNeeding(ids: readonly string[], needs: ReadonlyMap<string, readonly string[]>): Arrows {
  const place = new Map(ids.map((id, at) => [id, at]));
  const arrows: number[][] = ids.map(() => []);
  for (const [at, id] of ids.entries())
    for (const need of new Set(needs.get(id))) {
      const from = place.get(need);
      if (from !== undefined) arrows[from]!.push(at);
    }
  return arrows;
}
