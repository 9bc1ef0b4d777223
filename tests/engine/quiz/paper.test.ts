import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawPaper, type Paper, paperLength, preferredAfter } from "../../../src/engine/quiz/paper.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import { quizProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { toGoOver } from "../../../src/engine/quiz/review.ts";
import { one, quiz } from "./questions.ts";

/** Questions q0 … of objectives "even" and "odd". */
const pool = (count: number, paper: Paper | undefined, critical: readonly number[] = []): Quiz => ({
  ...quiz(
    0.8,
    ...Array.from({ length: count }, (_, place) =>
      one(`q${place}`, "rww", {
        objective: place % 2 === 0 ? "even" : "odd",
        critical: critical.includes(place),
      }),
    ),
  ),
  paper,
});
const ids = ({ questions }: Quiz): string[] => questions.map(({ id }) => id);
const countOf = (count: number): Paper => ({ kind: "count", count });
const byObjective: Paper = {
  kind: "objectives",
  counts: [
    { objective: "odd", count: 1 },
    { objective: "even", count: 3 },
  ],
};

describe("a paper", () => {
  test("without a rule is the whole pool", () => {
    expect(ids(drawPaper(pool(5, undefined), "s"))).toEqual(["q0", "q1", "q2", "q3", "q4"]);
  });

  test("is drawn again by its seed, in the written order, so many of each objective", () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 9 }), (seed, count) => {
        const all = pool(9, countOf(count));
        const drawn = ids(drawPaper(all, seed));
        expect(ids(drawPaper(all, seed))).toEqual(drawn);
        expect(drawn).toHaveLength(paperLength(all));
        expect(drawn).toEqual(drawn.toSorted());
        const named = drawPaper(pool(9, byObjective), seed).questions;
        expect(named.filter(({ objective }) => objective === "odd")).toHaveLength(1);
        expect(named.filter(({ objective }) => objective === "even")).toHaveLength(3);
      }),
    );
  });

  test("takes what is preferred first", () => {
    fc.assert(
      fc.property(fc.string(), (seed) => {
        const drawn = ids(drawPaper(pool(9, countOf(4)), seed, new Set(["q1", "q8", "unknown"])));
        expect(drawn).toEqual(expect.arrayContaining(["q1", "q8"]));
        expect(drawn).toHaveLength(4);
      }),
    );
  });

  /**
   * 4 of 10, 5,000 seeds: each question 2,000 times, with variance 5000·0.4·0.6. Of a draw without putting back the sum of
   * squared deviations over that variance, times 9/10, is chi-square with 9 degrees of freedom: 99.9 % point 27.88.
   */
  test("over many seeds covers the pool evenly", () => {
    const counts = new Map<string, number>();
    const all = pool(10, countOf(4));
    for (let seed = 0; seed < 5000; seed++)
      for (const id of ids(drawPaper(all, `seed ${seed}`))) counts.set(id, (counts.get(id) ?? 0) + 1);
    expect(counts.size).toBe(10);
    const squares = [...counts.values()].map((count) => (count - 2000) ** 2 / (5000 * 0.4 * 0.6));
    expect((squares.reduce((sum, one) => sum + one, 0) * 9) / 10).toBeLessThan(27.88);
  });

  test("mistakes of the author", () => {
    const codes = (all: Quiz) => quizProblems(all).map(({ code, at }) => [code, ...at]);
    expect(codes(pool(9, byObjective))).toEqual([]);
    expect(codes(pool(9, countOf(9)))).toEqual([]);
    expect(codes(pool(9, countOf(10)))).toEqual([["paper-too-long"]]);
    const odd = { kind: "objectives", counts: [{ objective: "odd", count: 1 }] } as const;
    expect(codes(pool(3, odd))).toEqual([
      ["never-drawn", 0, 0],
      ["never-drawn", 2, 2],
    ]);
    const unknown = {
      ...byObjective,
      counts: [...byObjective.counts, { objective: "constructor", count: 1 }],
    };
    expect(codes(pool(9, unknown))).toEqual([["objective-unknown"]]);
  });
});

describe("the next sitting", () => {
  const past = (asked: string, missed: string) => ({
    asked: [...asked].map((n) => `q${n}`),
    missed: [...missed].map((n) => `q${n}`),
  });

  test("prefers what was missed when last asked, and what was not asked", () => {
    expect(preferredAfter(pool(5, countOf(3)), [])).toEqual(new Set());
    expect(preferredAfter(pool(5, countOf(3)), [past("012", "1")])).toEqual(new Set(["q1", "q3", "q4"]));
    expect(preferredAfter(pool(5, countOf(3)), [past("012", "1"), past("134", "3")])).toEqual(
      new Set(["q3"]),
    );
  });

  test("what is to be gone over leaves the list when it was right again, critical ones twice running", () => {
    const all = pool(4, undefined, [3]);
    const listed = (...sittings: ReturnType<typeof past>[]) =>
      toGoOver(all, sittings).map(({ id, missed, rightSince }) => [id, missed, rightSince]);
    expect(listed()).toEqual([]);
    expect(listed(past("0123", ""))).toEqual([]);
    expect(listed(past("0123", "13"))).toEqual([
      ["q3", 1, 0],
      ["q1", 1, 0],
    ]);
    expect(listed(past("0123", "13"), past("13", ""))).toEqual([["q3", 1, 1]]);
    expect(listed(past("0123", "13"), past("13", ""), past("3", ""))).toEqual([]);
    expect(listed(past("0123", "13"), past("3", ""), past("3", "3"))).toEqual([
      ["q3", 2, 0],
      ["q1", 1, 0],
    ]);
    expect(listed(past("0", "0"), past("01", "01"))).toEqual([
      ["q0", 2, 0],
      ["q1", 1, 0],
    ]);
  });
});
