/** What guessing earns at pairs, groups and places, against going through every answer that the page takes. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { chanceOf } from "../../../src/engine/quiz/chance.ts";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import { scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { groups, pairs, places, quiz } from "./questions.ts";

/** Lists of so many numbers below `below`, all different where they must be. */
function lists(length: number, below: number, different: boolean): number[][] {
  if (length === 0) return [[]];
  return lists(length - 1, below, different).flatMap((list) =>
    Array.from({ length: below }, (_, next) => next)
      .filter((next) => !different || !list.includes(next))
      .map((next) => [...list, next]),
  );
}

/** Pairs take each choice once at most; groups take any number of items; of places one is chosen. */
function answersTo(question: Question): unknown[] {
  switch (question.kind) {
    case "match":
      return lists(question.items.length, question.choices.length, true);
    case "sort":
      return lists(question.items.length, question.groups.length, false);
    case "point":
      return [...question.places.keys()];
    default:
      throw new Error(question.kind);
  }
}

const more = fc.record({ points: fc.constantFrom(1, 2, 0.5), critical: fc.boolean() });
const anyQuestion = fc.oneof(
  fc
    .tuple(fc.integer({ min: 3, max: 4 }), fc.integer({ min: 0, max: 2 }), more)
    .map(([count, others, asked]) => pairs("q", count, others, asked)),
  fc
    .tuple(fc.constantFrom("0011", "0001", "01012", "00122"), more)
    .map(([pattern, asked]) => groups("q", pattern, asked)),
  fc.tuple(fc.constantFrom("wr", "wrw", "rrww"), more).map(([pattern, asked]) => places("q", pattern, asked)),
);

test("chance, mean and each total are those of going through all answers", () => {
  fc.assert(
    fc.property(anyQuestion, fc.constantFrom(0.2, 0.5, 1), (question, pass) => {
      const asked = quiz(pass, question);
      const scores = answersTo(question).map((answer) => scoreQuiz(asked, new Map([["q", answer]])));
      const chance = chanceOf(asked)!;
      const share = (of: (score: (typeof scores)[number]) => boolean): number =>
        scores.filter(of).length / scores.length;
      expect(chance.pass).toBeCloseTo(
        share(({ passed }) => passed),
        12,
      );
      expect(chance.mean).toBeCloseTo(scores.reduce((sum, { score }) => sum + score, 0) / scores.length, 12);
      const counted = chance.totals.filter((total) => total.chance > 0);
      expect(new Set(counted.map(({ score }) => score))).toEqual(new Set(scores.map(({ score }) => score)));
      for (const total of counted)
        expect(total.chance).toBeCloseTo(
          share(({ score }) => score === total.score),
          12,
        );
    }),
  );
});

/** Of n hats at random on n heads the chance that nobody has their own tends to 1/e: P. R. de Montmort (1713), here 9 of 24. */
test("four pairs: nobody's own in 9 of 24 ways, and one right on average", () => {
  const { totals, mean } = chanceOf(quiz(1, pairs("q", 4, 0, { points: 4 })))!;
  expect(totals[0]).toEqual({ score: 0, chance: 9 / 24 });
  expect(mean).toBe(1);
});
