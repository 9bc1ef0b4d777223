import * as fc from "fast-check";
import { expect, test } from "vitest";
import { below, mix32, sourceOf, xoshiro128 } from "../../../src/engine/quiz/random.ts";
import { shuffle } from "../../../src/engine/quiz/shuffle.ts";

test("xoshiro128** 1.1 gives the numbers of its authors' C code", () => {
  // State 1, 2, 3, 4: printed by the reference implementation, and used by the Rust crate rand_xoshiro as its test.
  const next = xoshiro128([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test("fmix32 gives the numbers of MurmurHash3", () => {
  // MurmurHash3_x86_32 of the empty text is fmix32 of its seed: the test vectors in common use.
  expect([0, 1, 0xffffffff].map(mix32)).toEqual([0, 0x514e28b7, 0x81f16f39]);
});

test("every character of a seed counts, its high byte too", () => {
  const seeds = ["", "a", "b", "ab", "ba", "aa", "a\u0000", "\u0061", "\u0161", "\u0000", "\u0000\u0000"];
  const firsts = seeds.map((seed) => sourceOf(seed)());
  expect(new Set(firsts).size).toBe(new Set(seeds).size);
});

test("what would favour the small numbers is drawn again", () => {
  // 2^32 = 3 · 1431655765 + 1, so only the last number has to be drawn again.
  const draws = [0xffffffff, 0xfffffffe, 7];
  const next = () => draws.shift()!;
  expect(below(3, next)).toBe(0xfffffffe % 3);
  expect(draws).toEqual([7]);
});

test("a shuffle holds the same items, and the same seed gives the same", () => {
  fc.assert(
    fc.property(fc.array(fc.integer()), fc.string(), (list, seed) => {
      const before = [...list];
      const drawn = shuffle(list, seed);
      expect(drawn.toSorted((a, b) => a - b)).toEqual(before.toSorted((a, b) => a - b));
      expect(shuffle(before, seed)).toEqual(drawn);
      expect(list).toEqual(before);
    }),
  );
});

test("every order of four is about equally likely", () => {
  const counts = new Map<string, number>();
  const draws = 24_000;
  for (let seed = 0; seed < draws; seed++) {
    const drawn = shuffle(["a", "b", "c", "d"], `seed ${seed}`).join("");
    counts.set(drawn, (counts.get(drawn) ?? 0) + 1);
  }
  expect(counts.size).toBe(24);
  const expected = draws / 24;
  const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  // Chi-square with 23 degrees of freedom: 0.999 of its distribution lies below 49.73 (any table); 0.001 below 7.53.
  expect(chiSquare).toBeLessThan(49.73);
  expect(chiSquare).toBeGreaterThan(7.53);
});

test("a draw stays what it was, because records hold seeds", () => {
  // Worked out once by a program of its own in another language, from the same three sources.
  expect(shuffle([...Array(8).keys()], "paper 1/guard")).toEqual([2, 4, 3, 1, 0, 5, 7, 6]);
  expect(shuffle([...Array(20).keys()], "½ § 漢 1")).toEqual([
    3, 9, 1, 7, 10, 6, 15, 13, 8, 14, 5, 0, 11, 4, 18, 16, 17, 19, 2, 12,
  ]);
});
