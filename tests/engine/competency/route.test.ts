/** The stages of the route: a small one by hand, and what holds of every one. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { routeStages } from "../../../src/engine/competency/route.ts";

const needsOf = (rows: Readonly<Record<string, readonly string[]>>) => new Map(Object.entries(rows));

test("each module stands behind the longest way that leads to it", () => {
  const stages = routeStages(
    needsOf({
      motor: ["springs", "screws"],
      oils: ["screws"],
      springs: ["oils", "oils"],
      screws: [],
      fire: [],
    }),
  );
  expect(stages).toEqual([["fire", "screws"], ["oils"], ["springs"], ["motor"]]);
});

test("nothing makes no stage; a need that is not there counts for nothing", () => {
  expect(routeStages(new Map())).toEqual([]);
  expect(routeStages(needsOf({ constructor: ["gone"] }))).toEqual([["constructor"]]);
});

test("what goes round in a circle, and what needs it, stands in one last stage", () => {
  const circle = { a: ["b"], b: ["a"], c: ["a"] };
  expect(routeStages(needsOf({ ...circle, first: [] }))).toEqual([["first"], ["a", "b", "c"]]);
  expect(routeStages(needsOf(circle))).toEqual([["a", "b", "c"]]);
});

/** Modules m0, m1, …, each needing some of those before it, in any order. */
const programmes = fc
  .integer({ min: 1, max: 25 })
  .chain((size) =>
    fc.tuple(
      ...Array.from({ length: size }, (_, at) => fc.subarray(Array.from({ length: at }, (_, i) => `m${i}`))),
    ),
  )
  .map((lists) => lists.map((needs, at) => [`m${at}`, needs] as const));

test("every module once, right behind the last of what it needs; no stage is empty; the order given is nothing to it", () => {
  fc.assert(
    fc.property(
      programmes.chain((rows) =>
        fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length })),
      ),
      ([rows, shuffled]) => {
        const stages = routeStages(new Map(rows));
        const stageOf = new Map(stages.flatMap((ids, at) => ids.map((id) => [id, at] as const)));
        expect(stages.flat().sort()).toEqual(rows.map(([id]) => id).sort());
        for (const ids of stages) expect(ids.length).toBeGreaterThan(0);
        for (const [id, needs] of rows)
          expect(stageOf.get(id)).toBe(Math.max(-1, ...needs.map((need) => stageOf.get(need)!)) + 1);
        expect(routeStages(new Map(shuffled))).toEqual(stages);
      },
    ),
  );
});
