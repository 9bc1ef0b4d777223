/** Statistics of questions, against published data and figures (tests/reference/quiz). */
import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reasonsToLook } from "../../../src/engine/quiz/statistics/advice.ts";
import { ofCorrelation, wilson } from "../../../src/engine/quiz/statistics/intervals.ts";
import { itemStatistics } from "../../../src/engine/quiz/statistics/item-statistics.ts";
import { Moments } from "../../../src/engine/quiz/statistics/moments.ts";
import { projectDir } from "../../support/project.ts";

const rowsOf = (file: string): string[][] =>
  readFileSync(`${projectDir}/tests/reference/quiz/${file}`, "utf8")
    .trim()
    .split("\n")
    .filter((line) => !line.startsWith("#"))
    .map((line) => line.split(","));

const keys = (ids: readonly string[]) => ids.map((id) => ({ id, max: 1, isAllOrNothing: true }));

function lsat6() {
  const [head, ...rows] = rowsOf("lsat6_patterns.csv");
  const moments = new Moments(5);
  for (const row of rows) {
    const scores = row.slice(0, 5).map(Number);
    for (let time = 0; time < Number(row[5]); time++) moments.add(scores);
  }
  return itemStatistics(moments, keys(head!.slice(0, 5)));
}

describe("LSAT section 6 (Bock and Lieberman 1970), figures verified with R", () => {
  const { persons, alpha, items } = lsat6();
  test("persons and alpha", () => {
    expect(persons).toBe(1000);
    expect(alpha).toBeCloseTo(0.2949971922, 9);
  });
  test.each([
    { item: 0, difficulty: 0.924, included: 0.3620104372, corrected: 0.1128326889 },
    { item: 1, difficulty: 0.709, included: 0.5667720954, corrected: 0.1531781201 },
    { item: 2, difficulty: 0.553, included: 0.6184397536, corrected: 0.1727789433 },
    { item: 3, difficulty: 0.763, included: 0.5344183262, corrected: 0.1444280952 },
    { item: 4, difficulty: 0.87, included: 0.4353664279, corrected: 0.1215964025 },
  ])("item $item", ({ item, difficulty, included, corrected }) => {
    const found = items[item]!;
    expect(found.difficulty).toBeCloseTo(difficulty, 12);
    expect(found.itemTotal).toBeCloseTo(included, 9);
    expect(found.discrimination).toBeCloseTo(corrected, 9);
  });
});

test("KR-20 of the ten by ten matrix of Wuensch, East Carolina University", () => {
  const [head, ...rows] = rowsOf("kr20_wuensch_10x10.csv");
  const moments = new Moments(10);
  for (const row of rows) moments.add(row.slice(1, 11).map(Number));
  const { alpha, variance, items } = itemStatistics(moments, keys(head!.slice(1, 11)));
  expect(variance).toBeCloseTo(5.84, 12);
  expect(alpha).toBeCloseTo(0.696347, 6);
  const sum = items.reduce((total, { difficulty: p }) => total + p! * (1 - p!), 0);
  expect(sum).toBeCloseTo(2.18, 12);
});

test("Wilson's limits of Newcombe (1998), table I, method 3 (values from memory, verified with R)", () => {
  expect(wilson(81, 263).low).toBeCloseTo(0.2553, 4);
  expect(wilson(81, 263).high).toBeCloseTo(0.3662, 4);
  expect(wilson(0, 20).low).toBe(0);
  expect(wilson(0, 20).high).toBeCloseTo(0.1611, 4);
});

test("an interval of a correlation holds it, and is none for three pairs", () => {
  expect(ofCorrelation(0.5, 3)).toBeUndefined();
  // Fisher for 28 pairs: tanh(0.5493 ± 1.96 / 5), by hand.
  const { low, high } = ofCorrelation(0.5, 28)!;
  expect(low).toBeCloseTo(0.156, 3);
  expect(high).toBeCloseTo(0.7358, 3);
});

test("figures from sums kept along the way are those of two passes over all sittings", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 4, maxLength: 4 }), {
        minLength: 2,
        maxLength: 30,
      }),
      (rows) => {
        const moments = new Moments(4);
        for (const row of rows) moments.add(row);
        const { items, variance } = itemStatistics(
          moments,
          keys(["a", "b", "c", "d"]).map((key) => ({ ...key, max: 4 })),
        );
        const totals = rows.map((row) => row.reduce((sum, one) => sum + one, 0));
        expect(variance).toBeCloseTo(covariance(totals, totals), 9);
        for (const [item, found] of items.entries()) {
          const scores = rows.map((row) => row[item]!);
          const rest = totals.map((total, person) => total - scores[person]!);
          const [a, b] = [covariance(scores, scores), covariance(rest, rest)];
          if (a < 1e-9 || b < 1e-9) expect(found.discrimination).toBeNull();
          else expect(found.discrimination).toBeCloseTo(covariance(scores, rest) / Math.sqrt(a * b), 9);
        }
      },
    ),
  );
});

function covariance(a: readonly number[], b: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const [meanA, meanB] = [mean(a), mean(b)];
  return mean(a.map((value, at) => (value - meanA) * (b[at]! - meanB)));
}

test("a wrong key, a dead option and a second right one are told in words", () => {
  const moments = new Moments(4);
  for (const row of [
    [1, 1, 1, 0],
    [1, 1, 1, 0],
    [1, 1, 0, 0],
    [0, 0, 0, 1],
    [0, 1, 0, 1],
  ])
    moments.add(row);
  const quiz = itemStatistics(moments, keys(["a", "b", "c", "d"]));
  const options = [
    { text: "kept", right: true, taken: 2, restMean: 0.2 },
    { text: "better", right: false, taken: 3, restMean: 0.9 },
    { text: "dead", right: false, taken: 0, restMean: null },
  ];
  const said = reasonsToLook(quiz.items[3]!, quiz, options).join("\n");
  expect(said).toContain("do worse at it");
  expect(said).toContain('nobody takes "dead"');
  expect(said).toContain('the better people take "better"');
  expect(reasonsToLook(quiz.items[0]!, quiz, [])).toEqual([]);
});
