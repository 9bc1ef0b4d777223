/** Odds as a person writes them. Expected values by hand. */
import { expect, test } from "vitest";
import { oddsWords } from "../../src/cli/order-count.ts";

test.each([
  [1n, 1n, "1 in 1"],
  [1n, 6n, "1 in 6"],
  [2n, 5n, "1 in 2.5"],
  [3n, 40n, "1 in 13"],
  [3n, 10n, "1 in 3.3"],
  [12n, 5040n, "1 in 420"],
  [1n, 40_320n, "1 in 40,320"],
  [1n, 4n * 10n ** 30n, "1 in 4.0e30"],
  [1n, 996n * 10n ** 10n, "1 in 1.0e13"],
  [1n, 10n ** 7n, "1 in 1.0e7"],
])("%s of %s is %s", (part, whole, words) => {
  expect(oddsWords(part, whole)).toBe(words);
});
