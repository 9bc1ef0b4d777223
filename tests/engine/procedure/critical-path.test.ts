import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { criticalPath } from "../../../src/engine/procedure/critical-path.ts";
import { planOf } from "../../../src/engine/procedure/sessions/plan.ts";
import type { TimedStep } from "../../../src/engine/procedure/sessions/timed-step.ts";
import { acyclicArrows, builtGraph, precedenceOf, stepName } from "./sample-orders.ts";

const timed = (times: readonly (readonly [number, number])[]): TimedStep[] =>
  times.map(([time, wait], index) => ({ id: stepName(index), time, wait, stop: false }));

describe("worked by hand", () => {
  // Two ways through: 0 → 1 → 3 takes 10 + (5 + 60) + 20, 0 → 2 → 3 takes 10 + 70 + 20.
  const graph = builtGraph(precedenceOf([[1, 2, 3], [3], [3], []]));

  test("the longer of two ways, waits counted", () => {
    const steps = timed([
      [10, 0],
      [5, 60],
      [70, 0],
      [20, 0],
    ]);
    expect(criticalPath(graph, steps)).toEqual({ steps: ["step-0", "step-2", "step-3"], minutes: 100 });
    expect(planOf(graph, steps, 500)).toMatchObject({ handsOn: 105, waits: 60 });
  });

  test("the wait after the last step counts too", () => {
    const steps = timed([
      [10, 0],
      [5, 66],
      [70, 0],
      [20, 30],
    ]);
    expect(criticalPath(graph, steps)).toEqual({ steps: ["step-0", "step-1", "step-3"], minutes: 131 });
  });

  test("free steps: the longest alone; of equal ones the first", () => {
    const free = builtGraph(precedenceOf([[], [], []]));
    expect(
      criticalPath(
        free,
        timed([
          [1, 1],
          [3, 0],
          [0, 3],
        ]),
      ),
    ).toEqual({ steps: ["step-1"], minutes: 3 });
  });

  test("no steps, no path", () => {
    const none = builtGraph({ steps: [], pairs: [] });
    expect(criticalPath(none, [])).toEqual({ steps: [], minutes: 0 });
  });
});

test("compared with every path of small graphs", () => {
  const times = fc.array(fc.tuple(fc.nat({ max: 9 }), fc.nat({ max: 9 })), { minLength: 8, maxLength: 8 });
  fc.assert(
    fc.property(acyclicArrows(1, 8), times, (arrows, all) => {
      const steps = timed(all.slice(0, arrows.length));
      const lengthOf = (path: readonly number[]) =>
        path.reduce((sum, place) => sum + steps[place]!.time + steps[place]!.wait, 0);
      const paths = everyPath(arrows);
      const found = criticalPath(builtGraph(precedenceOf(arrows)), steps);
      expect(found.minutes).toBe(Math.max(...paths.map(lengthOf)));
      const places = found.steps.map((id) => steps.findIndex((step) => step.id === id));
      expect(paths).toContainEqual(places);
      expect(lengthOf(places)).toBe(found.minutes);
    }),
    { numRuns: 500, seed: 20261125 },
  );
});

/** Every path along the arrows, a node alone being one. */
function everyPath(arrows: readonly (readonly number[])[]): number[][] {
  const paths = arrows.map((_, node) => [node]);
  for (const path of paths) for (const head of arrows[path.at(-1)!]!) paths.push([...path, head]);
  return paths;
}
