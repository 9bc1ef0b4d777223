import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kindOf, type Question } from "../../../src/engine/quiz/kinds.ts";
import { questionProblems, quizProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { remarksOn, scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { anyAnswer, anyQuiz, one, order, quantityQuestion, quiz, rightAnswer, several } from "./questions.ts";

const answers = (given: Record<string, unknown>): Map<string, unknown> => new Map(Object.entries(given));

describe("marking a quiz", () => {
  const paper = quiz(
    0.5,
    one("guard", "rww", { critical: true }),
    several("dry", "rrww", { points: 2 }),
    quantityQuestion("torque", "0.9 N·m", "5 %"),
    order("order", "abcd", ["ab", "bc", "cd"]),
  );

  test("by hand", () => {
    // 1 + 2·(1/2) + 1 + 2/3 of 5 points.
    const given = { guard: "option 0", dry: [1], torque: "8 lbf·in", order: ["b", "a", "c", "d"] };
    expect(scoreQuiz(paper, answers(given))).toEqual({
      score: 11 / 3,
      max: 5,
      fraction: 11 / 15,
      passed: true,
      unknown: [],
      questions: [
        {
          id: "guard",
          score: 1,
          max: 1,
          right: true,
          answered: true,
          failedCritical: false,
          problem: undefined,
        },
        {
          id: "dry",
          score: 1,
          max: 2,
          right: false,
          answered: true,
          failedCritical: false,
          problem: undefined,
        },
        {
          id: "torque",
          score: 1,
          max: 1,
          right: true,
          answered: true,
          failedCritical: false,
          problem: undefined,
        },
        {
          id: "order",
          score: 2 / 3,
          max: 1,
          right: false,
          answered: true,
          failedCritical: false,
          problem: undefined,
        },
      ],
    });
  });

  test("a critical question that is not right fails the quiz, answered or not", () => {
    const rest = { dry: [0, 1], torque: "0.9 Nm", order: ["a", "b", "c", "d"] };
    for (const given of [{ ...rest, guard: 1 }, rest]) {
      const result = scoreQuiz(paper, answers(given));
      expect([result.fraction, result.passed]).toEqual([0.8, false]);
      expect(result.questions[0]).toMatchObject({ right: false, failedCritical: true });
    }
  });

  test("a critical question must be wholly right", () => {
    const result = scoreQuiz(quiz(0.5, several("q", "rrw", { critical: true })), answers({ q: [0] }));
    expect(result).toMatchObject({ fraction: 0.5, passed: false });
  });

  test("a critical pair the wrong way round fails the quiz, although the question is not marked critical", () => {
    const paper = (pair: string) => quiz(0.5, one("q", "rw"), order("order", "abcd", [pair, "bc", "cd"]));
    const given = answers({ q: 0, order: ["b", "a", "c", "d"] });
    expect(scoreQuiz(paper("ab"), given)).toMatchObject({ fraction: 5 / 6, passed: true });
    expect(scoreQuiz(paper("ab!"), given)).toMatchObject({
      fraction: 5 / 6,
      passed: false,
      questions: [{ failedCritical: false }, { failedCritical: true }],
    });
  });

  test("answers of the wrong kind and to unknown questions earn nothing and stop nothing", () => {
    const given = {
      guard: ["option 0"],
      dry: "option 0",
      torque: { value: 1 },
      order: 7,
      other: 1,
      constructor: 0,
    };
    const result = scoreQuiz(paper, answers(given));
    expect(result).toMatchObject({ score: 0, max: 5, passed: false, unknown: ["other", "constructor"] });
    expect(result.questions.map(({ answered, problem }) => [answered, problem?.code])).toEqual(
      Array(4).fill([false, "wrong-kind"]),
    );
  });

  test("a quiz without points is not passed", () => {
    expect(scoreQuiz(quiz(0.5), answers({}))).toMatchObject({ score: 0, max: 0, fraction: 0, passed: false });
  });
});

describe("the pass mark is compared exactly", () => {
  test("ten questions of 0.1 points, eight right, pass 80 %", () => {
    const questions = Array.from({ length: 10 }, (_, place) => one(`q${place}`, "rw", { points: 0.1 }));
    const given = new Map(questions.map(({ id }, place) => [id, place < 8 ? 0 : 1]));
    // In floating point the eight add up to 0.7999999999999999 and the ten to 0.9999999999999999.
    expect(scoreQuiz(quiz(0.8, ...questions), given)).toMatchObject({
      score: 0.8,
      fraction: 0.8,
      passed: true,
    });
    expect(scoreQuiz(quiz(0.81, ...questions), given).passed).toBe(false);
  });

  test("two thirds are less than 66.67 % and more than 66.66 %", () => {
    const question = several("q", "rrrw");
    expect(scoreQuiz(quiz(0.6667, question), answers({ q: [0, 1] })).passed).toBe(false);
    expect(scoreQuiz(quiz(0.6666, question), answers({ q: [0, 1] })).passed).toBe(true);
  });

  test("thirds make a whole", () => {
    const thirds = [0, 1, 2].map((place) => several(`q${place}`, "rrrw"));
    const given = new Map(thirds.map(({ id }) => [id, [0]]));
    expect(scoreQuiz(quiz(0.5, ...thirds, one("other", "rw")), given)).toMatchObject({
      score: 1,
      fraction: 0.25,
    });
  });
});

describe("for any quiz", () => {
  test("right answers earn all, and pass", () => {
    fc.assert(
      fc.property(anyQuiz, (paper) => {
        const given = new Map(paper.questions.map((question) => [question.id, rightAnswer(question)]));
        const result = scoreQuiz(paper, given);
        expect(result.questions.every(({ right, score, max }) => right && score === max)).toBe(true);
        expect([result.score, result.fraction, result.passed]).toEqual([result.max, 1, true]);
      }),
    );
  });

  test("any answers earn from 0 to max, and all of it just where right", () => {
    const cases = anyQuiz.chain((paper) =>
      fc.tuple(fc.constant(paper), fc.array(anyAnswer, { maxLength: 7 })),
    );
    fc.assert(
      fc.property(cases, ([paper, given]) => {
        const result = scoreQuiz(paper, new Map(given.map((answer, place) => [`q${place}`, answer])));
        for (const { score, max, right } of [
          ...result.questions,
          { ...result, right: result.fraction === 1 },
        ]) {
          expect(score >= 0 && score <= max).toBe(true);
          expect(right).toBe(score === max);
        }
        expect(result.questions.map(({ id }) => id)).toEqual(paper.questions.map(({ id }) => id));
        // The sum of the rounded marks is near the exact one.
        expect(result.questions.reduce((sum, { score }) => sum + score, 0)).toBeCloseTo(result.score, 9);
      }),
      { numRuns: 500 },
    );
  });

  test("neither the order of questions nor that of options or steps changes a mark", () => {
    const cases = anyQuiz.chain((paper) =>
      fc.tuple(fc.constant(paper), fc.array(fc.nat(255), { minLength: 6, maxLength: 6 }), fc.string()),
    );
    fc.assert(
      fc.property(cases, ([paper, picks, seed]) => {
        const given = new Map(
          paper.questions.map((question, place) => [question.id, pickedFrom(question, picks[place]!)]),
        );
        const turned = quiz(
          paper.pass,
          ...paper.questions.map((question) => rearranged(question, seed)).toReversed(),
        );
        const [before, after] = [scoreQuiz(paper, given), scoreQuiz(turned, given)];
        expect({ ...after, questions: after.questions.toReversed() }).toEqual(before);
      }),
    );
  });

  test("remarks speak of every answer, and none holds an empty text", () => {
    fc.assert(
      fc.property(anyQuiz, anyAnswer, (paper, given) => {
        for (const question of paper.questions) {
          const remarks = remarksOn(question, given);
          if (kindOf(question).read(question, given).state !== "blank")
            expect(remarks.length).toBeGreaterThan(0);
          for (const { about } of remarks) expect(about.length).toBeGreaterThan(0);
        }
      }),
    );
  });

  test("questions survive JSON, as pages carry them", () => {
    fc.assert(
      fc.property(anyQuiz, (paper) => {
        const given = new Map(paper.questions.map((question) => [question.id, rightAnswer(question)]));
        expect(scoreQuiz(JSON.parse(JSON.stringify(paper)), given)).toEqual(scoreQuiz(paper, given));
      }),
    );
  });

  test("sound questions have no problems, and options are shown by the seed", () => {
    fc.assert(
      fc.property(anyQuiz, fc.string(), (paper, seed) => {
        for (const question of paper.questions) {
          expect(questionProblems(question).filter(({ code }) => code !== "tolerance-too-wide")).toEqual([]);
          const places = kindOf(question).shown(question, seed);
          expect(kindOf(question).shown(question, seed)).toEqual(places);
          const count = listOf(question).length;
          expect(places.toSorted((a, b) => a - b)).toEqual([...Array(count).keys()]);
        }
      }),
    );
  });
});

/** What is shown in a drawn order. */
function listOf(question: Question): readonly unknown[] {
  switch (question.kind) {
    case "choose-one":
    case "choose-several":
      return question.options;
    case "arrange":
      return question.steps;
    case "match":
      return question.choices;
    case "point":
      return question.places;
    case "sort":
      return question.items;
    case "number":
    case "text":
    case "worked":
      return [];
  }
}

/** An answer by texts and ids, which stays the same when options and steps are put in another order. */
function pickedFrom(question: Question, bits: number): unknown {
  switch (question.kind) {
    case "choose-one":
      return question.options[bits % question.options.length]!.text;
    case "choose-several":
      return question.options.filter((_, place) => (bits >> place) & 1).map(({ text }) => text);
    case "number":
      return `${question.answer.amount + (bits % 2)} ${question.answer.unit}`;
    case "arrange":
      return question.steps.map(({ id }) => id).toSorted((a, b) => key(a, bits) - key(b, bits));
    case "match":
      return question.items.map((_, item) => question.choices[(item * bits) % question.choices.length]);
    case "text":
      return bits % 2 ? question.answers[0] : "boiling";
    case "point":
      return question.places[bits % question.places.length]!.text;
    case "sort":
      return question.items.map((_, item) => question.groups[(item * bits) % question.groups.length]);
    case "worked":
      return `${question.cases[bits % question.cases.length]!.answer.amount} mm`;
  }
}

function key(id: string, bits: number): number {
  return (id.charCodeAt(0) * (bits | 1)) % 251;
}

function rearranged(question: Question, seed: string): Question {
  const places = kindOf(question).shown(question, seed);
  const turn = <Item>(list: readonly Item[]): Item[] => places.map((place) => list[place]!);
  switch (question.kind) {
    case "choose-one":
    case "choose-several":
      return { ...question, options: turn(question.options) };
    case "arrange":
      return { ...question, steps: turn(question.steps) };
    case "match": {
      const items = question.items.map((item) => ({ ...item, choice: places.indexOf(item.choice) }));
      return { ...question, items, choices: turn(question.choices) };
    }
    case "point":
      return { ...question, places: turn(question.places) };
    case "sort": {
      const last = question.groups.length - 1;
      const items = question.items.map((item) => ({ ...item, group: last - item.group }));
      return { ...question, items, groups: question.groups.toReversed() };
    }
    case "number":
    case "text":
    case "worked":
      return question;
  }
}

describe("mistakes of the author in the whole", () => {
  test("of a quiz", () => {
    const codes = (pass: number, ...questions: Question[]) =>
      quizProblems(quiz(pass, ...questions)).map(({ code, at }) => [code, ...at]);
    expect(codes(0.8, one("a", "rw"), one("b", "rw"))).toEqual([]);
    expect(codes(1, one("constructor", "rw"))).toEqual([]);
    expect(codes(0.8)).toEqual([["no-questions"]]);
    expect(codes(0, one("a", "rw"))).toEqual([["pass-out-of-range"]]);
    expect(codes(80, one("a", "rw"))).toEqual([["pass-out-of-range"]]);
    expect(codes(Number.NaN, one("a", "rw"))).toEqual([["pass-out-of-range"]]);
    expect(codes(0.8, one("a", "rw"), one("b", "rw"), one("a", "rw"))).toEqual([["repeated-question", 0, 2]]);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("of a question: %d points", (points) => {
    expect(questionProblems(one("q", "rw", { points })).map(({ code }) => code)).toEqual([
      "points-out-of-range",
    ]);
  });
});
