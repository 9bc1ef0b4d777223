/** The layout of the precedence drawing, against what must hold of any, and closed forms. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { layOut, type Spacing } from "../../layouts/precedence/layout.ts";
import { spread } from "../../layouts/precedence/spread.ts";
import { wrap } from "../../layouts/precedence/wrap.ts";
import type { Precedence } from "../../src/engine/procedure/precedence.ts";

const spacing: Spacing = { nodeWidth: 100, nodeHeight: 20, gapX: 10, gapY: 30, lineWidth: 4 };

const graphs: fc.Arbitrary<Precedence> = fc.integer({ min: 1, max: 14 }).chain((n) => {
  const steps = Array.from({ length: n }, (_, i) => ["constructor", "__proto__"][i] ?? `s${i}`);
  const pairs = steps.flatMap((first, i) =>
    steps.slice(i + 1).map((then) => ({ first, then, because: ["why"], critical: false })),
  );
  return fc.subarray(pairs).map((chosen) => ({ steps, pairs: chosen }));
});

test("lines lead down, boxes of a layer stand apart and inside the drawing, steps in no pair are left out", () => {
  fc.assert(
    fc.property(graphs, (graph) => {
      const { nodes, edges, width, height } = layOut(graph, spacing);
      const bound = graph.steps.filter((id) =>
        graph.pairs.some(({ first, then }) => first === id || then === id),
      );
      expect([...nodes.keys()].sort()).toEqual(bound.sort());
      const at = [...nodes.values()];
      for (const { x, y } of at) {
        expect(x).toBeGreaterThanOrEqual(spacing.nodeWidth / 2 - 1);
        expect(x).toBeLessThanOrEqual(width - spacing.nodeWidth / 2 + 1);
        expect(y).toBeLessThanOrEqual(height - spacing.nodeHeight / 2);
      }
      for (const [i, a] of at.entries()) {
        // Places are rounded to whole units, so two neighbours may lose one unit between them.
        for (const b of at.slice(i + 1))
          if (a.y === b.y) expect(Math.abs(a.x - b.x)).toBeGreaterThanOrEqual(109);
      }
      for (const { pair, points } of edges) {
        expect([points[0], points.at(-1)]).toEqual([nodes.get(pair.first), nodes.get(pair.then)]);
        for (const [i, point] of points.entries()) if (i > 0) expect(point.y).toBe(points[i - 1]!.y + 50);
      }
    }),
    { numRuns: 60 },
  );
});

test("a chain hangs straight down, and a step that only leads to a late one stands just above it", () => {
  const pair = (first: string, then: string) => ({ first, then, because: [""], critical: false });
  const chain = { steps: ["a", "b", "c", "d"], pairs: [pair("a", "b"), pair("b", "c"), pair("c", "d")] };
  expect([...layOut(chain, spacing).nodes.values()]).toEqual([10, 60, 110, 160].map((y) => ({ x: 50, y })));
  const late = { steps: ["a", "late", "b", "c"], pairs: [pair("a", "b"), pair("b", "c"), pair("late", "c")] };
  expect(layOut(late, spacing).nodes.get("late")!.y).toBe(60);
});

// Barlow, Bartholomew, Bremner and Brunk 1972: the isotonic regression is max over a <= i of min over b >= i of the mean of a..b.
test("things are spread with the least sum of squares (the max-min formula)", () => {
  const widths = fc.integer({ min: 1, max: 40 });
  const items = fc.array(fc.tuple(fc.integer({ min: -200, max: 200 }), widths), {
    minLength: 1,
    maxLength: 9,
  });
  fc.assert(
    fc.property(items, fc.integer({ min: 0, max: 20 }), (list, gap) => {
      const offsets = list.map((_, i) =>
        list.slice(1, i + 1).reduce((sum, [, width], k) => sum + list[k]![1] / 2 + gap + width / 2, 0),
      );
      const free = list.map(([want], i) => want - offsets[i]!);
      const mean = (a: number, b: number) =>
        free.slice(a, b + 1).reduce((sum, each) => sum + each, 0) / (b + 1 - a);
      const indices = free.map((_, i) => i);
      const expected = indices.map(
        (i) =>
          offsets[i]! +
          Math.max(
            ...indices
              .filter((a) => a <= i)
              .map((a) => Math.min(...indices.filter((b) => b >= i).map((b) => mean(a, b)))),
          ),
      );
      const found = spread(
        list.map(([want]) => want),
        list.map(([, width]) => width),
        gap,
      );
      // Sums of up to nine numbers below 1,000: rounding stays far below this.
      for (const [i, place] of found.entries()) expect(Math.abs(place - expected[i]!)).toBeLessThan(1e-9);
    }),
  );
});

test("titles are broken into lines and what is cut off ends in an ellipsis", () => {
  expect(wrap("Lift the board", 20, 2)).toEqual(["Lift the board"]);
  expect(wrap("Lift the board out and turn it over", 12, 2)).toEqual(["Lift the", "board out…"]);
  expect(wrap("Unübersehbarlang", 8, 2)).toEqual(["Unübers…"]);
  expect(wrap("Lift the board out", 14, 2)).toEqual(["Lift the board", "out"]);
});
