/** Statistics of questions from papers that ask some of them, against figures worked by hand and by another program. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reasonsToLook } from "../../../../src/engine/quiz/statistics/advice.ts";
import {
  type ItemKey,
  itemStatistics,
  type QuizStatistics,
} from "../../../../src/engine/quiz/statistics/item-statistics.ts";
import { Moments } from "../../../../src/engine/quiz/statistics/moments.ts";
import { PaperMoments } from "../../../../src/engine/quiz/statistics/paper-moments.ts";
import { paperStatistics } from "../../../../src/engine/quiz/statistics/paper-statistics.ts";
import { paperWords } from "../../../../src/engine/quiz/statistics/paper-words.ts";

/** Not asked. */
const n = Number.NaN;

const keysFor = (max: readonly number[]): ItemKey[] =>
  max.map((most, item) => ({ id: "abcdefgh"[item]!, max: most, isAllOrNothing: most === 1 }));

function ofPapers(max: readonly number[], rows: readonly (readonly number[])[]): QuizStatistics {
  const moments = new PaperMoments(max);
  for (const row of rows) moments.add(row);
  return paperStatistics(moments, keysFor(max));
}

describe("three questions, two on each paper, worked by hand", () => {
  // Variances 1/3 each; covariances 1/2 of a with b, 1/2 of a with c, −1/2 of b with c, of two people each.
  const rows = [
    [1, 1, n],
    [1, n, 1],
    [0, 0, n],
    [0, n, 0],
    [n, 1, 0],
    [n, 0, 1],
  ];
  const found = ofPapers([1, 1, 1], rows);
  test("alpha is 3 · 1/6 / (1/3 + 2 · 1/6), and of a paper of two 2 · 1/6 / (1/3 + 1/6)", () => {
    expect(found.alpha).toBeCloseTo(3 / 4, 12);
    expect(found.papers).toMatchObject({ length: 2, questions: 3, pairs: 3, apart: 0 });
    expect(found.papers!.alpha).toBeCloseTo(2 / 3, 12);
  });
  test("each is over the four who were asked it", () => {
    expect(found.items.map(({ asked }) => asked)).toEqual([4, 4, 4]);
    expect(found.items.map(({ difficulty }) => difficulty)).toEqual([0.5, 0.5, 0.5]);
    expect(found.items[0]!.discrimination).toBeCloseTo(1, 12);
    expect(found.items[1]!.discrimination).toBeCloseTo(0, 12);
  });
  test("where covariances do not fit together there is no alpha: −1 / (1/3 − 1/2) and 1 / (1/3 + 1/2)", () => {
    expect(found.items.map(({ alphaWithout }) => alphaWithout)).toEqual([null, null, null]);
    const two = ofPapers(
      [1, 1],
      [
        [1, 1],
        [0, 0],
        [1, n],
        [0, n],
        [1, n],
        [0, n],
      ],
    );
    // Variances 6/5 · 1/4 and 1/2, covariance 1/2: alpha 1 / (0.4 + 0.5).
    expect(two).toMatchObject({ alpha: null, papers: { noAlpha: "does-not-fit" } });
    expect(paperWords(two).join(" ")).toContain("There is no alpha: the covariances are those of different");
  });
});

describe("four questions of ten people, with the figures of pandas 3.0 (DataFrame.cov, pairwise) and numpy (corrcoef)", () => {
  const rows = [
    [1, 1, 2, n],
    [1, 0, n, 1],
    [0, n, 1, 0],
    [n, 1, 2, 1],
    [1, 1, 1, n],
    [0, 0, n, 0],
    [1, n, 0, 1],
    [n, 0, 0, 0],
    [0, 1, 1, n],
    [1, 1, n, 1],
  ];
  const max = [1, 1, 2, 1];
  const found = ofPapers(max, rows);
  test("alpha, that of a paper of three, and how many were asked", () => {
    expect(found.persons).toBe(10);
    expect(found.alpha).toBeCloseTo(0.7751730296941279, 12);
    expect(found.papers!.alpha).toBeCloseTo(0.7211298809194128, 12);
    expect(found.items.map(({ asked }) => asked)).toEqual([8, 8, 7, 7]);
  });
  test.each([
    {
      item: 0,
      difficulty: 0.625,
      rest: 0.551149426541087,
      all: 0.7934155258887434,
      without: 0.783216783216783,
    },
    {
      item: 1,
      difficulty: 0.625,
      rest: 0.5342629438805235,
      all: 0.7734466520637752,
      without: 0.6500829187396351,
    },
    {
      item: 2,
      difficulty: 0.5,
      rest: 0.42919753763947605,
      all: 0.8186652343647229,
      without: 0.8696711327649208,
    },
    {
      item: 3,
      difficulty: 4 / 7,
      rest: 0.7668796031319033,
      all: 0.8886042349318385,
      without: 0.5682656826568264,
    },
  ])("question $item", ({ item, difficulty, rest, all, without }) => {
    const one = found.items[item]!;
    expect(one.difficulty).toBeCloseTo(difficulty, 12);
    expect(one.discrimination).toBeCloseTo(rest, 12);
    expect(one.itemTotal).toBeCloseTo(all, 12);
    expect(one.alphaWithout).toBeCloseTo(without, 12);
  });
  test("two that were never asked together are told, and the others' mean covariance stands for theirs", () => {
    const holed = ofPapers(
      max,
      rows.map((row) => (Number.isNaN(row[2]) ? row : [...row.slice(0, 3), n])),
    );
    expect(holed.alpha).toBeCloseTo(0.7670222573422889, 12);
    expect(holed.papers).toMatchObject({ pairs: 6, apart: 1, length: 2.6 });
    expect(holed.papers!.alpha).toBeCloseTo(0.6815252223382423, 12);
    expect(paperWords(holed).join(" ")).toContain(
      "Of its 6 pairs of questions 1 were asked together of fewer than two people",
    );
  });
});

test("where nothing is missing, the figures are those of sittings that all ask the same", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 4, maxLength: 4 }), {
        minLength: 2,
        maxLength: 30,
      }),
      (rows) => {
        const max = [3, 3, 3, 3];
        const moments = new Moments(4);
        for (const row of rows) moments.add(row);
        const [same, papers] = [itemStatistics(moments, keysFor(max)), ofPapers(max, rows)];
        expectClose(papers.alpha, same.alpha);
        expectClose(papers.papers!.alpha, same.alpha);
        expectClose(papers.variance, same.variance);
        for (const [at, one] of same.items.entries()) {
          const other = papers.items[at]!;
          expect(other.asked).toBe(one.asked);
          for (const name of ["difficulty", "discrimination", "itemTotal", "alphaWithout"] as const)
            expectClose(other[name], one[name]);
        }
      },
    ),
  );
});

function expectClose(found: number | null, expected: number | null): void {
  if (expected === null) expect(found).toBeNull();
  else expect(found).toBeCloseTo(expected, 9);
}

test("a question that nobody was asked has no figures, and that is said", () => {
  const quiz = ofPapers(
    [1, 1, 1],
    [
      [1, 1, n],
      [0, 1, n],
      [0, 0, n],
      [n, n, n],
    ],
  );
  expect(quiz.persons).toBe(3);
  expect(quiz.items[2]).toMatchObject({
    asked: 0,
    difficulty: null,
    discrimination: null,
    alphaWithout: null,
  });
  const nobodys = [{ text: "dead", right: false, taken: 0, restMean: null }];
  expect(reasonsToLook(quiz.items[2]!, quiz, nobodys)).toEqual([
    "nobody was asked it: nothing is known of it yet",
  ]);
  // Variances 1/3 each and a covariance of 1/6: alpha 2 · 1/6 / (1/3 + 1/6), as if the third were not there.
  expect(quiz.alpha).toBeCloseTo(2 / 3, 12);
  expect(quiz.papers!.questions).toBe(2);
});

test("where no two were asked together, difficulty stays and alpha is left out with a word", () => {
  const quiz = ofPapers(
    [1, 1],
    [
      [1, n],
      [0, n],
      [n, 1],
      [n, 1],
    ],
  );
  expect(quiz).toMatchObject({ alpha: null, papers: { noAlpha: "never-together", pairs: 1, apart: 1 } });
  expect(quiz.items.map(({ difficulty }) => difficulty)).toEqual([0.5, 1]);
  expect(quiz.items.map(({ discrimination }) => discrimination)).toEqual([null, null]);
  expect(paperWords(quiz)[1]).toBe(
    "There is no alpha: no two questions were asked together of two people or more.",
  );
});

test("of many sittings those questions are named that few were asked", () => {
  const rows = Array.from({ length: 40 }, (_, at) => (at < 9 ? [at % 2, 1, n] : [at % 2, n, at % 3 ? 1 : 0]));
  const words = paperWords(ofPapers([1, 1, 1], rows));
  expect(words.at(-1)).toMatch(/^Asked fewer than 30 times each, .*: b\.$/);
  expect(words[0]).toContain("asked some of the questions, 2 on the average");
});
