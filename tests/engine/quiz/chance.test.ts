/** What guessing earns, against published figures and against going through every answer. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { chanceOf, generousGuesses } from "../../../src/engine/quiz/chance.ts";
import { ordersByMoves } from "../../../src/engine/quiz/guess-order.ts";
import type { Question } from "../../../src/engine/quiz/kinds.ts";
import type { Quiz } from "../../../src/engine/quiz/quiz.ts";
import { scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { one, quantityQuestion, several } from "./questions.ts";

const quizOf = (pass: number, questions: readonly Question[]): Quiz => ({ pass, questions });
const alike = (count: number, pattern: string): Question[] =>
  Array.from({ length: count }, (_, i) => one(`q${i}`, pattern));

describe("published chances of guessing", () => {
  // homeworksource.com/p/1031195 and novelanswer.com, as collected in tests/reference/quiz/psychometrics_examples.csv.
  test.each([
    { questions: 20, options: "rwww", pass: 0.5, published: 0.0139, digits: 4 },
    { questions: 10, options: "rwwww", pass: 0.5, published: 0.0328, digits: 4 },
    { questions: 10, options: "rwwww", pass: 0.3, published: 0.3222, digits: 4 },
  ])("$questions questions of $options, mark $pass", ({ questions, options, pass, published, digits }) => {
    expect(chanceOf(quizOf(pass, alike(questions, options)))!.pass).toBeCloseTo(published, digits);
  });
});

test("the distribution of equal questions is the binomial one", () => {
  const { totals, mean } = chanceOf(quizOf(0.5, alike(6, "rww")))!;
  const ways = [1, 6, 15, 20, 15, 6, 1];
  const binomial = ways.map((way, hits) => way * (1 / 3) ** hits * (2 / 3) ** (6 - hits));
  expect(totals.map(({ score }) => score)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  for (const [hits, chance] of binomial.entries()) expect(totals[hits]!.chance).toBeCloseTo(chance, 14);
  expect(mean).toBeCloseTo(2, 14);
});

/** Every answer that the page takes, all equally likely. */
function answersTo(question: Question): unknown[] {
  switch (question.kind) {
    case "choose-one":
      return [...question.options.keys()];
    case "choose-several":
      return Array.from({ length: 2 ** question.options.length }, (_, mask) =>
        [...question.options.keys()].filter((place) => (mask >> place) & 1),
      );
    case "arrange":
      return ordersOf(question.steps.map(({ id }) => id));
    default:
      return [""];
  }
}

function ordersOf(steps: readonly string[]): string[][] {
  if (steps.length === 0) return [[]];
  return steps.flatMap((step, at) => ordersOf(steps.toSpliced(at, 1)).map((rest) => [step, ...rest]));
}

const arrangeQuestion = (
  id: string,
  pairs: readonly [number, number, boolean][],
  points: number,
): Question => ({
  ...{ id, ask: "?", why: "", see: "#s", objective: undefined, critical: false, points },
  kind: "arrange",
  steps: ["a", "b", "c", "d"].map((step) => ({ id: step, title: step })),
  precedence: {
    steps: ["a", "b", "c", "d"],
    pairs: pairs.map(([first, then, critical]) => ({
      first: "abcd"[first]!,
      then: "abcd"[then]!,
      because: ["so"],
      critical,
    })),
  },
});

const patterns = fc.constantFrom("rw", "rww", "rrw", "rwww");
const pairs = fc.uniqueArray(
  fc
    .tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 3 }), fc.boolean())
    .filter(([a, b]) => a < b),
  { minLength: 1, maxLength: 4, selector: ([a, b]) => `${a}${b}` },
);
const anyQuestion = fc.record({
  kind: fc.constantFrom("one", "several", "number", "arrange"),
  pattern: patterns,
  pairs,
  points: fc.constantFrom(1, 2, 0.5),
  critical: fc.boolean(),
});

test("chance and mean are those of going through all answers, critical questions counted", () => {
  fc.assert(
    fc.property(
      fc.array(anyQuestion, { minLength: 1, maxLength: 3 }),
      fc.constantFrom(0.3, 0.5, 0.8, 1),
      (drawn, pass) => {
        let orders = 0;
        const questions = drawn.map(({ kind, pattern, pairs: bound, points, critical }, at): Question => {
          const id = `q${at}`;
          if (kind === "several") return several(id, pattern, { points, critical });
          if (kind === "number") return { ...quantityQuestion(id, "50 mL", "10 %"), points, critical };
          // One order question at most: each has 24 answers.
          if (kind === "arrange" && orders++ === 0)
            return { ...arrangeQuestion(id, bound, points), critical };
          return one(id, pattern, { points, critical });
        });
        const quiz = quizOf(pass, questions);
        let all: Map<string, unknown>[] = [new Map()];
        for (const question of questions) {
          all = all.flatMap((given) =>
            answersTo(question).map((answer) => new Map([...given, [question.id, answer]])),
          );
        }
        const scores = all.map((answers) => scoreQuiz(quiz, answers));
        const chance = chanceOf(quiz)!;
        expect(chance.pass).toBeCloseTo(scores.filter(({ passed }) => passed).length / all.length, 12);
        expect(chance.mean).toBeCloseTo(scores.reduce((sum, { score }) => sum + score, 0) / all.length, 12);
        expect(chance.totals.reduce((sum, { chance: each }) => sum + each, 0)).toBeCloseTo(1, 12);
        expect(chanceOf(quiz, generousGuesses)!.pass).toBeGreaterThanOrEqual(chance.pass - 1e-12);
      },
    ),
    { numRuns: 150 },
  );
});

test("moves of all orders are those of the order answer", () => {
  fc.assert(
    fc.property(pairs, (bound) => {
      const question = arrangeQuestion("q", bound, 1);
      if (question.kind !== "arrange") return;
      const graph = graphOf(question.precedence).graph!;
      const counted = new Map<string, number>();
      for (const order of ordersOf(["a", "b", "c", "d"])) {
        const { moves, failedCritical } = answerOrder(graph, order);
        counted.set(`${moves} ${failedCritical}`, (counted.get(`${moves} ${failedCritical}`) ?? 0) + 1);
      }
      const found = ordersByMoves(graph).map(({ moves, failsCritical, orders }) => [
        `${moves} ${failsCritical}`,
        orders,
      ]);
      expect(new Map(found as [string, number][])).toEqual(counted);
    }),
    { numRuns: 60 },
  );
});
