import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { type ArrangeQuestion, arrange, arrangeSetting } from "../../../src/engine/quiz/arrange.ts";
import { compare, none, ratio, toNumber, whole } from "../../../src/engine/quiz/ratio.ts";
import { order, questionWith } from "./questions.ts";

const orders = questionWith("q").filter(
  (question): question is ArrangeQuestion => question.kind === "arrange",
);

function keepsEveryPair({ precedence }: ArrangeQuestion, given: readonly string[]): boolean {
  return precedence.pairs.every(({ first, then }) => given.indexOf(first) < given.indexOf(then));
}

describe("what an order earns", () => {
  const chain = order("q", "abcd", ["ab", "bc", "cd"]);

  test.each([
    // A chain of four: worst is 4 − 1 = 3 moves; counted by hand.
    ["abcd", 1, 1],
    ["bacd", 2, 3],
    ["dabc", 2, 3],
    ["badc", 1, 3],
    ["dcba", 0, 1],
    ["abc", 2, 3],
    ["abcdx", 2, 3],
    ["xyz", 0, 1],
  ])("%s earns %d/%d", (given, top, bottom) => {
    expect(arrange.judge(chain, [...given]).credit).toEqual(ratio(top, bottom));
  });

  test("the score of the order answer, for any order", () => {
    const cases = orders.chain((question) =>
      fc.tuple(
        fc.constant(question),
        fc.shuffledSubarray([...question.precedence.steps, "x", "y"], { minLength: 1 }),
      ),
    );
    fc.assert(
      fc.property(cases, ([question, given]) => {
        const { graph } = graphOf(question.precedence);
        const judged = arrange.judge(question, given);
        const answer = answerOrder(graph!, given);
        // `score` is 1 − moves / worst in floating point.
        expect(toNumber(judged.credit)).toBeCloseTo(answer.score, 12);
        expect(judged.failsCritical).toBe(answer.failedCritical);
      }),
    );
  });

  test("everything just where no pair is broken", () => {
    const cases = orders.chain((question) =>
      fc.tuple(
        fc.constant(question),
        fc.shuffledSubarray([...question.precedence.steps], { minLength: question.steps.length }),
      ),
    );
    fc.assert(
      fc.property(cases, ([question, given]) => {
        const all = compare(arrange.judge(question, given).credit, whole) === 0;
        expect(all).toBe(keepsEveryPair(question, given));
      }),
    );
  });

  test("steps that may stand in any order are right or incomplete", () => {
    const free = order("q", "abcd", []);
    expect(arrange.judge(free, [..."dbca"]).credit).toEqual(whole);
    expect(arrange.judge(free, [..."dbc"]).credit).toEqual(none);
  });

  test("a critical pair the wrong way round fails, directly or by way of others", () => {
    const question = order("q", "abcd", ["ab!", "bc", "cd"]);
    expect(arrange.judge(question, [..."bacd"]).failsCritical).toBe(true);
    expect(arrange.judge(question, [..."abdc"]).failsCritical).toBe(false);
  });
});

describe("reading an order", () => {
  const question = order("q", "abcd", ["ab"]);

  test.each<[unknown, string, string | undefined]>([
    [["b", "a"], "answered", undefined],
    [["b", "constructor"], "answered", undefined],
    [[], "blank", undefined],
    [null, "blank", undefined],
    ["a,b", "unreadable", "wrong-kind"],
    [{ 0: "a" }, "unreadable", "wrong-kind"],
    [["a", 1], "unreadable", "wrong-kind"],
    [["a", null], "unreadable", "wrong-kind"],
    [["a", undefined], "unreadable", "wrong-kind"],
    [["a", "b", "a"], "unreadable", "repeated-step"],
    [Array.from({ length: 501 }, (_, place) => `s${place}`), "unreadable", "too-many"],
  ])("%j", (given, state, code) => {
    const read = arrange.read(question, given);
    expect(read.state).toBe(state);
    expect(read.state === "unreadable" ? read.problem.code : undefined).toBe(code);
  });
});

test("remarks name steps by their titles, with the reason", () => {
  const question = order("q", "abcd", ["ab", "bc"]);
  expect(arrange.remarks(question, [..."cbax"])).toEqual([
    {
      verdict: "wrong",
      about: ["Step a", "Step b"],
      because: "a opens the way to b",
      reasons: ["a opens the way to b"],
    },
    {
      verdict: "wrong",
      about: ["Step b", "Step c"],
      because: "b opens the way to c",
      reasons: ["b opens the way to c"],
    },
    { verdict: "missed", about: ["Step d"], because: "" },
    { verdict: "wrong", about: ["x"], because: "" },
  ]);
  expect(arrange.remarks(question, [..."adbc"])).toMatchObject([{ verdict: "right", because: "" }]);
  expect(arrange.remarks(question, undefined)).toEqual([]);
});

describe("the order to start from", () => {
  test("holds every step, is drawn by the seed, and is never right where an order can be wrong", () => {
    fc.assert(
      fc.property(orders, fc.string(), (question, seed) => {
        const places = arrange.shown(question, seed);
        expect(places.toSorted((a, b) => a - b)).toEqual([...question.steps.keys()]);
        expect(arrange.shown(question, seed)).toEqual(places);
        expect(
          keepsEveryPair(
            question,
            places.map((place) => question.steps[place]!.id),
          ),
        ).toBe(false);
      }),
    );
  });

  test("is drawn all the same where none can be wrong", () => {
    expect(arrange.shown(order("q", "abcd", []), "seed").toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3]);
  });

  test("differs from seed to seed", () => {
    const question = order("q", "abcdef", ["ab"]);
    const drawn = new Set(
      Array.from({ length: 50 }, (_, seed) => arrange.shown(question, `${seed}`).join("")),
    );
    expect(drawn.size).toBeGreaterThan(40);
  });
});

test.each<[string, string, string[], string[]]>([
  ["sound", "abcd", ["ab"], []],
  ["no pair", "abcd", [], ["cannot-be-wrong"]],
  ["three steps", "abc", ["ab"], ["too-few-steps"]],
  ["nine steps", "abcdefghi", ["ab"], ["too-many-steps"]],
])("mistakes of the author: %s", (_name, steps, pairs, codes) => {
  expect(arrangeSetting.problems(order("q", steps, pairs)).map(({ code }) => code)).toEqual(codes);
});

test("mistakes of the author: a step twice", () => {
  const question = order("q", "abcd", ["ab"]);
  const twice = { ...question, steps: [...question.steps, question.steps[1]!] };
  expect(arrangeSetting.problems(twice)).toMatchObject([{ code: "repeated-step", at: [1, 4] }]);
});
