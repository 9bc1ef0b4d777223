/** The layout of the precedence drawing, against what must hold of any, and closed forms. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Band, bandsOf } from "../../layouts/precedence/bands.ts";
import { type Line, layOut, type Spacing } from "../../layouts/precedence/layout.ts";
import { spread } from "../../layouts/precedence/spread.ts";
import { linesOf, pathThrough } from "../../layouts/precedence/strokes.ts";
import { wrap } from "../../layouts/precedence/wrap.ts";
import type { Pair, Precedence } from "../../src/engine/procedure/precedence.ts";
import type { Swap } from "../../src/engine/procedure/swaps.ts";

const spacing: Spacing = {
  ...{ nodeWidth: 100, nodeHeight: 20, gapX: 10, gapY: 30, lineWidth: 4 },
  ...{ bandTop: 40, bandBottom: 16, most: 3 },
};

interface Drawn extends Precedence {
  readonly phaseOf: ReadonlyMap<string, string>;
  readonly swaps: readonly Swap[];
}

/** Any steps in any phases; each pair of them bound, allowed to swap, or neither. */
const graphs: fc.Arbitrary<Drawn> = fc.integer({ min: 1, max: 14 }).chain((n) => {
  const steps = Array.from({ length: n }, (_, i) => ["constructor", "__proto__"][i] ?? `s${i}`);
  const couples = steps.flatMap((first, i) => steps.slice(i + 1).map((then) => ({ first, then })));
  const kinds = fc.constantFrom("pair", "swap", "free", "free");
  return fc
    .tuple(
      fc.array(kinds, { minLength: couples.length, maxLength: couples.length }),
      fc.array(fc.constantFrom("", "a", "toString"), { minLength: n, maxLength: n }),
    )
    .map(([kind, phases]) => ({
      steps,
      pairs: couples
        .filter((_, i) => kind[i] === "pair")
        .map((each) => ({ ...each, because: ["why"], critical: false })),
      swaps: couples.filter((_, i) => kind[i] === "swap").map((each) => ({ ...each, because: "why" })),
      phaseOf: new Map(steps.map((step, i) => [step, phases[i]!])),
    }));
});

const layoutOf = ({ steps, pairs, swaps, phaseOf }: Drawn) =>
  layOut(
    bandsOf({ steps, pairs }, (step) => phaseOf.get(step)!),
    pairs,
    swaps,
    spacing,
  );

const forAll = (check: (graph: Drawn) => void) => fc.assert(fc.property(graphs, check), { numRuns: 80 });

test("each step has a box in the band of its phase, and no two boxes overlap", () => {
  forAll((graph) => {
    const { nodes, bands, width, height } = layoutOf(graph);
    expect([...nodes.keys()].sort()).toEqual([...graph.steps].sort());
    for (const { band, top, height } of bands) {
      for (const step of band.steps) {
        expect(graph.phaseOf.get(step)).toBe(band.phase);
        const { y, half } = nodes.get(step)!;
        expect(y - half).toBeGreaterThanOrEqual(top + spacing.bandTop);
        expect(y + half).toBeLessThanOrEqual(top + height - spacing.bandBottom);
      }
    }
    const at = [...nodes.values()];
    for (const [i, a] of at.entries()) {
      // Places are rounded to whole units, so each may lose one.
      expect(a.x).toBeGreaterThanOrEqual(spacing.nodeWidth / 2 - 1);
      expect(a.x).toBeLessThanOrEqual(width - spacing.nodeWidth / 2 + 1);
      expect(a.y + a.half).toBeLessThanOrEqual(height);
      for (const b of at.slice(i + 1)) {
        if (a.y === b.y) expect(Math.abs(a.x - b.x)).toBeGreaterThanOrEqual(109);
        else expect(Math.abs(a.y - b.y)).toBeGreaterThanOrEqual(spacing.nodeHeight + spacing.gapY);
      }
      expect(at.filter(({ y }) => y === a.y).length).toBeLessThanOrEqual(spacing.most);
    }
  });
});

test("each pair has one line that leads down from its first step to its second, and through no box", () => {
  forAll((graph) => {
    const { nodes, pairs, swaps } = layoutOf(graph);
    expect(pairs.map(({ link }) => link)).toEqual(graph.pairs);
    expect(swaps.map(({ link }) => link)).toEqual(graph.swaps);
    for (const { link, points } of pairs) {
      expect([points[0]!.y, points.at(-1)!.y]).toEqual([nodes.get(link.first)!.y, nodes.get(link.then)!.y]);
    }
    for (const { link, points } of [...pairs, ...swaps]) {
      const ends = [nodes.get(link.first)!, nodes.get(link.then)!].sort((a, b) => a.y - b.y);
      for (const [end, point] of [[ends[0]!, points[0]!] as const, [ends[1]!, points.at(-1)!] as const]) {
        expect(point.y).toBe(end.y);
        expect(Math.abs(point.x - end.x)).toBeLessThan(spacing.nodeWidth / 2);
      }
      for (const [i, point] of points.entries()) {
        if (i > 0) expect(point.y).toBeGreaterThan(points[i - 1]!.y);
        if (i === 0 || i === points.length - 1) continue;
        for (const { x, y } of nodes.values())
          if (y === point.y) expect(Math.abs(x - point.x)).toBeGreaterThan(spacing.nodeWidth / 2);
      }
    }
  });
});

test("cut into bands, lines go on where they were cut, and each has one tip", () => {
  forAll((graph) => {
    const layout = layoutOf(graph);
    const strokes = linesOf(layout);
    const whole = (lines: readonly Line<Pair | Swap>[]) => lines.map(({ points }) => points);
    const all = strokes.flat();
    expect(all.filter(({ kind }) => kind?.includes("tip"))).toHaveLength(graph.pairs.length);
    expect(new Set(all.flatMap(({ points }) => points))).toEqual(
      new Set([...whole(layout.pairs), ...whole(layout.swaps)].flat()),
    );
    for (const [index, { top, height }] of layout.bands.entries()) {
      for (const { points } of strokes[index]!) {
        expect(points.length).toBeGreaterThan(1);
        for (const { y } of points) expect([y >= top, y <= top + height]).toEqual([true, true]);
      }
    }
  });
});

test("bands follow the precedence, and a phase is split only where it has to be", () => {
  forAll((graph) => {
    const bands = bandsOf(graph, (step) => graph.phaseOf.get(step)!);
    const order = bands.flatMap(({ steps }) => steps);
    expect(order.toSorted()).toEqual(graph.steps.toSorted());
    for (const { first, then } of graph.pairs) expect(order.indexOf(first)).toBeLessThan(order.indexOf(then));
    for (const [i, { phase, isContinued }] of bands.entries())
      expect(isContinued).toBe(bands.slice(0, i).some((other) => other.phase === phase));
    const phases = [...new Set(graph.phaseOf.values())];
    if (canStandWhole(phases, graph)) expect(bands).toHaveLength(phases.length);
  });
});

/** Whether the phases can be put in an order in which every pair leads on: all orders are tried. */
function canStandWhole(phases: readonly string[], { pairs, phaseOf }: Drawn): boolean {
  const orders = phases.reduce<string[][]>(
    (built, phase) =>
      built.flatMap((order) =>
        Array.from({ length: order.length + 1 }, (_, i) => order.toSpliced(i, 0, phase)),
      ),
    [[]],
  );
  const leadsOn = (order: readonly string[]) =>
    pairs.every(({ first, then }) => order.indexOf(phaseOf.get(first)!) <= order.indexOf(phaseOf.get(then)!));
  return orders.some(leadsOn);
}

const pair = (first: string, then: string) => ({ first, then, because: [""], critical: false });
const oneBand = (...steps: string[]): Band[] => [{ phase: "", isContinued: false, steps }];

test("a phase that another one interrupts goes on below it", () => {
  const graph = { steps: ["a", "b", "c", "d"], pairs: [pair("a", "b"), pair("b", "c")] };
  const phases = new Map([..."abcd"].map((step) => [step, step === "b" ? "in" : "out"]));
  expect(bandsOf(graph, (step) => phases.get(step)!)).toEqual([
    { phase: "out", isContinued: false, steps: ["a", "d"] },
    { phase: "in", isContinued: false, steps: ["b"] },
    { phase: "out", isContinued: true, steps: ["c"] },
  ]);
});

test("a chain hangs straight down, and a step that only leads to a late one stands just above it", () => {
  const chain = layOut(
    oneBand("a", "b", "c", "d"),
    [pair("a", "b"), pair("b", "c"), pair("c", "d")],
    [],
    spacing,
  );
  expect([...chain.nodes.values()]).toEqual([50, 100, 150, 200].map((y) => ({ x: 50, y, half: 10 })));
  const pairs = [pair("a", "b"), pair("b", "c"), pair("late", "c")];
  expect(layOut(oneBand("a", "late", "b", "c"), pairs, [], spacing).nodes.get("late")!.y).toBe(100);
});

test("a line begins below its box and ends above the other, straight past what stands between", () => {
  const points = [
    { x: 10, y: 50, half: 10 },
    { x: 30, y: 100, half: 10 },
    { x: 30, y: 150, half: 10 },
  ];
  expect(pathThrough(points)).toBe("M10 60c0 15 20 15 20 30v20v30");
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

test("things that are to stay within a reach are spread best within it", () => {
  // Two things of width 10 and a gap of 2, both drawn to 50, within 20 on either side: as far to the right as they go.
  expect(spread([50, 50], [10, 10], 2, 20)).toEqual([3, 15]);
  expect(spread([-50, 50], [10, 10], 2, 20)).toEqual([-15, 15]);
});

test("titles are broken into lines and what is cut off ends in an ellipsis", () => {
  expect(wrap("Lift the board", 20, 2)).toEqual(["Lift the board"]);
  expect(wrap("Lift the board out and turn it over", 12, 2)).toEqual(["Lift the", "board out…"]);
  expect(wrap("Unübersehbarlang", 8, 2)).toEqual(["Unübers…"]);
  expect(wrap("Lift the board out", 14, 2)).toEqual(["Lift the board", "out"]);
});
