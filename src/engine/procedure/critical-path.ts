/** The critical path: how long a procedure takes at least, however many hands there are. */
import { type Graph, placeOf } from "./graph.ts";
import { inSeconds, type TimedStep } from "./sessions/timed-step.ts";

export interface CriticalPath {
  /** Ids from a step that nothing comes before to one that nothing comes after. */
  readonly steps: readonly string[];
  /** Work and waits along it; the wait after its last step counts. */
  readonly minutes: number;
}

/**
 * The path of the precedence graph on which time and wait add up to most (J. E. Kelley, M. R. Walker, "Critical-path planning
 * and scheduling", Eastern Joint Computer Conference 1959). Of equal ones the one whose first differing step comes first in
 * step order. `steps` are those of the graph, in any order. O(steps + reduced pairs).
 */
export function criticalPath(graph: Graph, steps: readonly TimedStep[]): CriticalPath {
  const { poset, places, precedence } = graph;
  const longest = new Float64Array(poset.size);
  for (const step of steps) longest[placeOf(places, step.id)] = inSeconds(step.time) + inSeconds(step.wait);
  const next: (number | undefined)[] = new Array(poset.size);
  const isFirst = new Array<boolean>(poset.size).fill(true);
  for (const place of poset.order.toReversed()) {
    next[place] = largest(poset.covers[place]!, longest);
    if (next[place] !== undefined) longest[place]! += longest[next[place]]!;
    for (const after of poset.covers[place]!) isFirst[after] = false;
  }
  const first = largest(
    precedence.steps.flatMap((_, place) => (isFirst[place] ? [place] : [])),
    longest,
  );
  const path: string[] = [];
  for (let place = first; place !== undefined; place = next[place]) path.push(precedence.steps[place]!);
  return { steps: path, minutes: first === undefined ? 0 : longest[first]! / 60 };
}

/** Of the places with the largest value the first given. */
function largest(places: readonly number[], values: Float64Array): number | undefined {
  let best: number | undefined;
  for (const place of places) if (best === undefined || values[place]! > values[best]!) best = place;
  return best;
}
