import * as fc from "fast-check";
import { expect, test } from "vitest";
import { hasBit, members } from "../../../src/engine/procedure/bits.ts";
import { findCycle } from "../../../src/engine/procedure/cycle.ts";
import { posetOf } from "../../../src/engine/procedure/poset.ts";
import { subPoset } from "../../../src/engine/procedure/sub-poset.ts";
import { acyclicArrows, builtPoset, isRight, reachability } from "./sample-orders.ts";

test("closure, its transpose and the transitive reduction are those of Warshall's algorithm", () => {
  fc.assert(
    fc.property(acyclicArrows(0, 40), (arrows) => {
      const poset = builtPoset(arrows);
      const reach = reachability(arrows);
      for (const [low, row] of reach.entries()) {
        for (const [high, reached] of row.entries()) {
          expect(hasBit(poset.after, low, high)).toBe(reached);
          expect(hasBit(poset.before, high, low)).toBe(reached);
        }
        const direct = row.flatMap((reached, high) =>
          reached && !row.some((between, middle) => between && reach[middle]![high]) ? [high] : [],
        );
        expect(poset.covers[low]).toEqual(direct);
      }
      expect(poset.order.toSorted((a, b) => a - b)).toEqual([...arrows.keys()]);
      expect(isRight(reach, poset.order)).toBe(true);
    }),
    { numRuns: 150 },
  );
});

test("the order among some elements keeps what holds by way of the others", () => {
  const input = acyclicArrows(1, 15).chain((arrows) =>
    fc.tuple(fc.constant(arrows), fc.shuffledSubarray([...arrows.keys()])),
  );
  fc.assert(
    fc.property(input, ([arrows, chosen]) => {
      const part = subPoset(builtPoset(arrows), chosen);
      const reach = reachability(arrows);
      for (const [index, element] of chosen.entries()) {
        const expected = chosen.flatMap((other, place) => (reach[element]![other] ? [place] : []));
        expect(members(part.after, index)).toEqual(expected);
      }
    }),
    { numRuns: 200 },
  );
});

const anyArrows = fc.integer({ min: 1, max: 12 }).chain((size) =>
  fc.array(fc.uniqueArray(fc.nat({ max: size - 1 }), { maxLength: 2 }), {
    minLength: size,
    maxLength: size,
  }),
);

test("a cycle is found exactly where something leads back to itself, and it is one", () => {
  let found = 0;
  fc.assert(
    fc.property(anyArrows, (arrows) => {
      const cycle = findCycle(arrows);
      const reach = reachability(arrows);
      expect(cycle !== null).toBe(reach.some((row, node) => row[node]));
      expect(posetOf(arrows) === null).toBe(cycle !== null);
      if (cycle === null) return;
      found++;
      expect(new Set(cycle).size).toBe(cycle.length);
      expect(cycle[0]).toBe(Math.min(...cycle));
      for (const [at, node] of cycle.entries()) {
        expect(arrows[node]).toContain(cycle[(at + 1) % cycle.length]);
      }
    }),
    { numRuns: 500 },
  );
  expect(found).toBeGreaterThan(50);
});

test("a cycle found leaves no shorter way round through its start", () => {
  // 0 → 1 → 2 → 3 → 0 with the short cut 1 → 3.
  expect(findCycle([[1], [2, 3], [3], [0]])).toEqual([0, 1, 3]);
});

test("a chain of 5,000 elements needs no recursion", () => {
  const size = 5000;
  const chain = Array.from({ length: size }, (_, index) => (index + 1 < size ? [index + 1] : []));
  expect(members(builtPoset(chain).after, 0)).toHaveLength(size - 1);
  chain[size - 1] = [0];
  expect(findCycle(chain)).toEqual([...chain.keys()]);
});
