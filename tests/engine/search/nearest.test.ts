import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editDistance } from "../../../src/engine/search/edit-distance.ts";
import { nearestWords } from "../../../src/engine/search/nearest.ts";

const letters = ["a", "b", "c"];

/** All words that one slip makes of a word, by trying every slip. */
function oneSlip(word: string): string[] {
  const made: string[] = [];
  for (let at = 0; at <= word.length; at++) {
    const [before, after] = [word.slice(0, at), word.slice(at)];
    for (const letter of letters) made.push(before + letter + after, before + letter + after.slice(1));
    made.push(before + after.slice(1), before + (after[1] ?? "") + (after[0] ?? "") + after.slice(2));
  }
  return made;
}

const word = fc.string({ unit: fc.constantFrom(...letters), maxLength: 6 });

describe("the distance of two words", () => {
  test("is 1 exactly where trying every slip makes the one of the other", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b) === 1).toBe(a !== b && oneSlip(a).includes(b));
      }),
      { numRuns: 1000 },
    );
  });

  test("is the same both ways, and 0 for the same word alone", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
      }),
    );
  });
});

describe("what was meant", () => {
  const known = ["spring", "string", "sprint", "screwdriver", "ratchet", "m3x0.5", "oil"];
  test.each([
    ["sping", ["spring"]],
    ["psring", ["spring"]],
    ["ratchte", ["ratchet"]],
    ["screwdrvier", ["screwdriver"]],
    ["scrwdrivr", ["screwdriver"]],
    ["satchet", []],
    ["m3x0.6", []],
    ["oli", []],
  ])("by %s: %j", (typed, meant) => {
    expect(nearestWords(typed, known)).toEqual(meant);
  });
});
