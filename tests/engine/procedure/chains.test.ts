import * as fc from "fast-check";
import { expect, test } from "vitest";
import { setOf } from "../../../src/engine/procedure/bits.ts";
import { chainsOf, widthOf } from "../../../src/engine/procedure/chains.ts";
import { heightOf, layersOf } from "../../../src/engine/procedure/layers.ts";
import { maximumMatching, unmatched } from "../../../src/engine/procedure/matching.ts";
import { acyclicArrows, builtPoset, reachability, subsets } from "./sample-orders.ts";

test("width and height are those of the largest antichain and chain among all subsets", () => {
  fc.assert(
    fc.property(acyclicArrows(0, 9), (arrows) => {
      const reach = reachability(arrows);
      const related = (a: number, b: number) => reach[a]![b]! || reach[b]![a]!;
      const all = subsets(arrows.length);
      const largest = (fits: (a: number, b: number) => boolean) =>
        Math.max(
          ...all
            .filter((set) => set.every((a, at) => set.slice(at + 1).every((b) => fits(a, b))))
            .map((set) => set.length),
        );
      const poset = builtPoset(arrows);
      expect(widthOf(poset)).toBe(largest((a, b) => !related(a, b)));
      expect(heightOf(poset)).toBe(largest(related));
    }),
    { numRuns: 150 },
  );
});

test("chains hold every element once, ascending; there are as many as the width", () => {
  fc.assert(
    fc.property(acyclicArrows(1, 50), (arrows) => {
      const poset = builtPoset(arrows);
      const reach = reachability(arrows);
      const chains = chainsOf(poset);
      expect(chains).toHaveLength(widthOf(poset));
      expect(chains.flat().sort((a, b) => a - b)).toEqual([...arrows.keys()]);
      for (const chain of chains) {
        for (const [at, element] of chain.slice(1).entries()) expect(reach[chain[at]!]![element]).toBe(true);
      }
    }),
    { numRuns: 100 },
  );
});

test("layers are the lengths of the longest chains before each element", () => {
  // 0 → 2 → 3, 1 → 3, 4 alone.
  expect([...layersOf(builtPoset([[2], [3], [3], [], []]))]).toEqual([0, 0, 1, 2, 0]);
});

const bipartite = fc
  .integer({ min: 1, max: 8 })
  .chain((size) => fc.array(fc.uniqueArray(fc.nat({ max: size - 1 })), { minLength: size, maxLength: size }));

test("a matching is as large as P. Hall's theorem allows", () => {
  fc.assert(
    fc.property(bipartite, (lists) => {
      const size = lists.length;
      const rows = lists.map((list) => setOf(size, list));
      const bits = Uint32Array.from(rows.flatMap((row) => [...row.bits]));
      const { left, right } = maximumMatching({ rows: size, words: 1, bits });
      for (const [node, partner] of left.entries()) {
        if (partner < 0) continue;
        expect(lists[node]).toContain(partner);
        expect(right[partner]).toBe(node);
      }
      // The deficiency: the most by which a set of left nodes outnumbers what it is joined to (Ore 1955).
      const deficiency = Math.max(
        ...subsets(size).map((set) => set.length - new Set(set.flatMap((node) => lists[node]!)).size),
      );
      expect(unmatched(left)).toHaveLength(deficiency);
      expect(unmatched(right)).toHaveLength(deficiency);
    }),
    { numRuns: 300 },
  );
});

test("a matching that needs long alternating paths", () => {
  // Left i is joined to i and i + 1, the last left only to 0: all must shift by one.
  const size = 1000;
  const words = Math.ceil(size / 32);
  const bits = new Uint32Array(size * words);
  for (let node = 0; node < size - 1; node++) {
    bits.set(setOf(size, [node, node + 1]).bits, node * words);
  }
  bits.set(setOf(size, [0]).bits, (size - 1) * words);
  expect(unmatched(maximumMatching({ rows: size, words, bits }).left)).toEqual([]);
});
