/** Rounding that a reader can't take amiss: the cases are our own, by arithmetic. */
import { expect, test } from "vitest";
import { markWords, shareWords } from "../../../src/engine/quiz/score-words.ts";

test.each([
  [0.8, "80 %", "80 %"],
  [0.7996, "79.9 %", "80 %"],
  [2 / 3, "66.6 %", "66.7 %"],
  [6 / 7, "85.7 %", "85.8 %"],
  [1, "100 %", "100 %"],
  [0, "0 %", "0 %"],
])("a score of %d reads %s, a mark %s: what is below the mark never reads as it", (value, score, mark) => {
  expect([shareWords(value), markWords(value)]).toEqual([score, mark]);
});
