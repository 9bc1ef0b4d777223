import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { beginsWithOneError, fitWithOneError, fitWithoutError } from "../../../src/engine/search/match.ts";

/** Optimal string alignment distance, by its recurrence: an independent way to count typing errors. */
function distance(a: string, b: string): number {
  const rows = Array.from({ length: a.length + 1 }, (_, i) => [i, ...Array<number>(b.length).fill(0)]);
  for (let j = 0; j <= b.length; j++) rows[0]![j] = j;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const wrong = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(rows[i - 1]![j]! + 1, rows[i]![j - 1]! + 1, rows[i - 1]![j - 1]! + wrong);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      rows[i]![j] = least;
    }
  }
  return rows[a.length]![b.length]!;
}

const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), minLength: 1, maxLength: 8 });

test("one error away from a beginning of the word, as the recurrence says", () => {
  fc.assert(
    fc.property(word, word, (typed, full) => {
      const beginnings = Array.from({ length: full.length + 1 }, (_, end) => full.slice(0, end));
      expect(beginsWithOneError(typed, full)).toBe(beginnings.some((part) => distance(typed, part) <= 1));
    }),
    { numRuns: 3000 },
  );
});

describe("how well a word fits", () => {
  test("the word itself fits best, then its beginning, then its stem, then an error", () => {
    const fits = [
      fitWithoutError("oil")("oil"),
      fitWithoutError("oil")("oiler"),
      fitWithoutError("oiling")("oiled"),
      fitWithOneError("governro")("governor"),
    ];
    expect(fits).toEqual([...fits].sort((a, b) => b - a));
    expect(new Set([...fits, 0]).size).toBe(5);
  });

  test.each([
    ["governro", "governor"],
    ["gvernor", "governor"],
    ["goverrnor", "governor"],
    ["gobernor", "governor"],
    ["sprng", "springs"],
  ])("%s finds %s", (typed, meant) => {
    expect(fitWithoutError(typed)(meant)).toBe(0);
    expect(fitWithOneError(typed)(meant)).toBeGreaterThan(0);
  });

  test.each([
    ["m3", "m4"],
    ["1/4-20unc", "1/4-28unc"],
    ["12ba", "10ba"],
    ["oli", "oil"],
  ])("%s never stands for %s", (typed, other) => {
    expect(fitWithoutError(typed)(other) + fitWithOneError(typed)(other)).toBe(0);
  });

  test("a single letter is only itself", () => {
    expect(fitWithoutError("a")("a")).toBe(1);
    expect(fitWithoutError("s")("spring")).toBe(0);
  });

  test("two letters, or a series of threads, are no beginning of another word; a thread half typed is", () => {
    expect(["bar", "base", "bag"].map(fitWithoutError("ba"))).toEqual([0, 0, 0]);
    expect(fitWithoutError("unc")("uncover")).toBe(0);
    expect(fitWithoutError("ba")("ba")).toBe(1);
    expect(fitWithoutError("4b")("4ba")).toBeGreaterThan(0);
  });
});
