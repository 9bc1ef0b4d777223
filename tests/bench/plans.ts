/** Times the plan of a procedure: its sessions and its critical path. */
import { graphOf } from "../../src/engine/procedure/graph.ts";
import type { Pair } from "../../src/engine/procedure/precedence.ts";
import { planOf } from "../../src/engine/procedure/sessions/plan.ts";
import { type Random, randomFrom } from "./random.ts";
import { quantile, type Row } from "./row.ts";

/** What "a few milliseconds" may be: less than a third of the 16 ms between two pictures of a screen. */
const budget = 5;

/** Runs that are not counted: the first ones are spent on compiling the code. */
const warmUp = 30;

/** One may stop after every second step; sessions hold from all steps down to about fifteen of them. */
export function planRows(): Row[] {
  return [150, 1_000_000].map((session) => ({
    what: `plan of 500 steps in sessions of ${session.toLocaleString("en")} min, p95 of 50`,
    measured: planTime(500, session, 50),
    unit: "ms",
    budget,
  }));
}

function planTime(count: number, session: number, times: number): number {
  const random = randomFrom(count);
  const all = Array.from({ length: times + warmUp }, () => {
    const { graph, steps } = drawn(count, random);
    const began = performance.now();
    const { split } = planOf(graph, steps, session);
    const took = performance.now() - began;
    if (split.sessions === null) throw new Error("a stretch is longer than a session");
    return took;
  });
  return quantile(all.slice(warmUp), 0.95);
}

/** Steps of 1 to 20 minutes; each comes after one of the twenty written before it. */
function drawn(count: number, random: Random) {
  const steps = Array.from({ length: count }, (_, index) => ({
    id: `step-${index}`,
    time: random.whole(1, 20),
    wait: random.whole(0, 9) === 0 ? 30 : 0,
    stop: index % 2 === 1,
  }));
  const pairs = steps.slice(1).map(({ id }, index): Pair => {
    const first = steps[Math.max(0, index + 1 - random.whole(1, 20))]!.id;
    return { first, then: id, because: ["it must"], critical: false };
  });
  const { graph } = graphOf({ steps: steps.map(({ id }) => id), pairs });
  if (graph === null) throw new Error("the graph has a cycle");
  return { graph, steps };
}
