/** The chance of passing a drawn paper, against going through every paper that can be drawn. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { chanceOf, generousGuesses } from "../../../src/engine/quiz/chance.ts";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import { type Paper, poolsOf } from "../../../src/engine/quiz/paper.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import { worstPaper } from "../../../src/engine/quiz/worst-paper.ts";
import { one, quantityQuestion, quiz, several } from "./questions.ts";

/** All ways to take so many from a list, by definition: with its first, or without. */
function choices<Item>(list: readonly Item[], count: number): Item[][] {
  if (count === 0) return [[]];
  if (list.length < count) return [];
  const [first, ...rest] = list;
  return [...choices(rest, count - 1).map((some) => [first!, ...some]), ...choices(rest, count)];
}

/** Every paper of the quiz, each as a quiz that asks all its questions. */
function papersOf(all: Quiz): Quiz[] {
  const drawn = poolsOf(all.questions, all.paper!).reduce<Question[][]>(
    (before, { pool, count }) =>
      before.flatMap((paper) => choices(pool, count).map((more) => [...paper, ...more])),
    [[]],
  );
  return drawn.map((questions) => ({ ...all, paper: undefined, questions }));
}

const anyQuestion = fc.record({
  kind: fc.constantFrom("one", "several", "number"),
  pattern: fc.constantFrom("rw", "rww", "rrw", "rwww"),
  points: fc.constantFrom(1, 2, 0.5),
  critical: fc.boolean(),
  objective: fc.constantFrom("springs", "oil"),
});

const anyPool = fc
  .record({
    drawn: fc.array(anyQuestion, { minLength: 1, maxLength: 6 }),
    byObjective: fc.boolean(),
    take: fc.tuple(fc.nat(), fc.nat()),
    pass: fc.constantFrom(0.3, 0.5, 0.8, 1),
  })
  .map(({ drawn, byObjective, take, pass }): Quiz => {
    const questions = drawn.map(({ kind, pattern, ...asked }, at): Question => {
      if (kind === "several") return several(`q${at}`, pattern, asked);
      if (kind === "number") return { ...quantityQuestion(`q${at}`, "50 mL", "10 %"), ...asked };
      return one(`q${at}`, pattern, asked);
    });
    const named = ["springs", "oil"].filter((name) => questions.some(({ objective }) => objective === name));
    const sizeOf = (name: string) => questions.filter(({ objective }) => objective === name).length;
    const paper: Paper = byObjective
      ? {
          kind: "objectives",
          counts: named.map((objective, at) => ({ objective, count: 1 + (take[at]! % sizeOf(objective)) })),
        }
      : { kind: "count", count: 1 + (take[0] % questions.length) };
    return { ...quiz(pass, ...questions), paper };
  });

test("is the mean over all papers, their distributions mixed evenly; the worst paper is one of them, and the easiest to guess", () => {
  fc.assert(
    fc.property(anyPool, (all) => {
      const papers = papersOf(all);
      const each = papers.map((paper) => chanceOf(paper)!);
      const mean = (of: (chance: (typeof each)[number]) => number): number =>
        each.reduce((sum, one) => sum + of(one), 0) / each.length;
      const chance = chanceOf(all)!;
      expect(Number(chance.papers)).toBe(papers.length);
      expect(chance.pass).toBeCloseTo(
        mean(({ pass }) => pass),
        12,
      );
      expect(chance.mean).toBeCloseTo(
        mean((one) => one.mean),
        12,
      );
      expect(chance.max).toBeCloseTo(Math.max(...each.map(({ max }) => max)), 12);
      for (const { score, chance: share } of chance.totals) {
        const inPaper = (one: (typeof each)[number]) =>
          one.totals.find((total) => total.score === score)?.chance ?? 0;
        expect(share).toBeCloseTo(mean(inPaper), 12);
      }
      expect(chance.totals.reduce((sum, { chance: share }) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(chanceOf(all, generousGuesses)!.pass).toBeGreaterThanOrEqual(chance.pass - 1e-12);
      const worst = worstPaper(all)!;
      expect(worst.pass).toBe(Math.max(...each.map(({ pass }) => pass)));
      const found = papers.findIndex(
        ({ questions }) =>
          questions
            .map(({ id }) => id)
            .toSorted()
            .join() === worst.questions.toSorted().join(),
      );
      expect(each[found]!.pass).toBe(worst.pass);
    }),
    { numRuns: 200 },
  );
});

test("a paper of questions that are alike is the quiz of so many of them, whatever the pool holds", () => {
  const pool = (count: number) =>
    quiz(0.5, ...Array.from({ length: count }, (_, at) => one(`q${at}`, "rwww")));
  const drawn = chanceOf({ ...pool(40), paper: { kind: "count", count: 10 } })!;
  const whole = chanceOf(pool(10))!;
  expect({ ...drawn, papers: 1n }).toEqual(whole);
  // 40! / (10! 30!), as tabulated: Abramowitz & Stegun 24.1.1.
  expect(drawn.papers).toBe(847660528n);
});

test("by hand: one of two questions, a coin and a die of four, must be right", () => {
  const all = {
    ...quiz(1, one("coin", "rw"), one("four", "rwww")),
    paper: { kind: "count", count: 1 },
  } as const;
  // (1/2 + 1/4) / 2.
  expect(chanceOf(all)).toMatchObject({ pass: 0.375, papers: 2n });
  expect(worstPaper(all)).toEqual({ pass: 0.5, questions: ["coin"] });
});

test("the mark is that of the paper drawn, where questions have different points", () => {
  const all = {
    ...quiz(
      0.5,
      one("small", "rw"),
      one("large", "rw", { points: 3 }),
      quantityQuestion("figure", "50 mL", "10 %"),
    ),
    paper: { kind: "count", count: 2 },
  } as const;
  // small+large: 3 of 4 points at least, so large; small+figure: 1 of 2; large+figure: 3 of 4. Each a coin.
  expect(chanceOf(all)!.pass).toBe(0.5);
});

test("a quiz without a paper has no worst one, and a pool too mixed is not gone through", () => {
  expect(worstPaper(quiz(0.5, one("q", "rw")))).toBeUndefined();
  const mixed = Array.from({ length: 14 }, (_, at) => one(`q${at}`, "rw", { points: at + 1 }));
  expect(worstPaper({ ...quiz(0.5, ...mixed), paper: { kind: "count", count: 7 } })).toBeUndefined();
});
