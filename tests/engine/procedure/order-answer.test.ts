import { describe, expect, test } from "vitest";
import { answerOrder, repeatedSteps } from "../../../src/engine/procedure/answer-order.ts";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";
import { builtGraph, precedenceOf, stepName } from "./sample-orders.ts";

function pair(first: string, then: string, because: string[], critical = false): Pair {
  return { first, then, because, critical };
}

const strip: Precedence = {
  steps: ["lid-off", "let-down", "belt-off", "motor-off"],
  pairs: [
    pair("lid-off", "belt-off", ["the lid covers the belt"]),
    pair("let-down", "motor-off", ["a motor under power can run away"], true),
    pair("belt-off", "motor-off", ["the belt ties the motor", "the belt would tear"]),
  ],
};

describe("an answer worked out by hand", () => {
  const graph = builtGraph(strip);

  test("a right order", () => {
    const given = ["let-down", "lid-off", "belt-off", "motor-off"];
    expect(answerOrder(graph, given)).toEqual({
      valid: true,
      moves: 0,
      worst: 2,
      score: 1,
      breaks: [],
      fix: [],
      fixed: given,
      missing: [],
      extra: [],
      failedCritical: false,
    });
  });

  test("a wrong order: what breaks and why, and the one move that mends it", () => {
    expect(answerOrder(graph, ["motor-off", "lid-off", "let-down", "belt-off"])).toEqual({
      valid: false,
      moves: 1,
      worst: 2,
      score: 0.5,
      breaks: [
        { ...pair("let-down", "motor-off", [], true), because: "a motor under power can run away" },
        { ...pair("belt-off", "motor-off", []), because: "the belt ties the motor; the belt would tear" },
      ],
      fix: [{ step: "motor-off", after: "belt-off" }],
      fixed: ["lid-off", "let-down", "belt-off", "motor-off"],
      missing: [],
      extra: [],
      failedCritical: true,
    });
  });

  test("steps left out and foreign ones: each a move; a break across the left-out step is told", () => {
    expect(answerOrder(graph, ["motor-off", "__proto__", "lid-off"])).toEqual({
      valid: false,
      moves: 4,
      worst: 2,
      score: 0,
      breaks: [
        {
          ...pair("lid-off", "motor-off", []),
          because:
            "lid-off → belt-off: the lid covers the belt; belt-off → motor-off: the belt ties the motor; " +
            "belt-off → motor-off: the belt would tear",
        },
      ],
      fix: [
        { step: "let-down", after: "lid-off" },
        { step: "belt-off", after: "let-down" },
        { step: "motor-off", after: "belt-off" },
      ],
      fixed: ["lid-off", "let-down", "belt-off", "motor-off"],
      missing: ["let-down", "belt-off"],
      extra: ["__proto__"],
      failedCritical: false,
    });
  });

  test("nothing given at all", () => {
    const { moves, fix, fixed } = answerOrder(graph, []);
    expect(moves).toBe(4);
    expect(fix[0]).toEqual({ step: "lid-off", after: null });
    expect(fixed).toEqual(strip.steps);
  });

  test("where no order is wrong, the score is 1 or, for steps left out, 0", () => {
    const free = builtGraph({ steps: ["a", "b"], pairs: [] });
    expect(answerOrder(free, ["b", "a"])).toMatchObject({ worst: 0, moves: 0, score: 1, valid: true });
    expect(answerOrder(free, ["b"])).toMatchObject({ worst: 0, moves: 1, score: 0, valid: false });
    expect(answerOrder(builtGraph({ steps: [], pairs: [] }), [])).toMatchObject({ score: 1, valid: true });
  });

  test("a step given twice is a wrong call, and is named", () => {
    expect(repeatedSteps(["a", "b", "a", "constructor", "a", "b"])).toEqual(["a", "b"]);
    expect(repeatedSteps(["a", "constructor", "__proto__"])).toEqual([]);
    expect(() => answerOrder(graph, ["lid-off", "lid-off"])).toThrow(RangeError);
  });

  test("a critical pair fails even where only a pair that follows from it is reversed", () => {
    // a → b is critical and b before c, so a before c is too; a and b stand right.
    const chain = builtGraph({
      steps: ["a", "b", "c"],
      pairs: [pair("a", "b", ["x"], true), pair("b", "c", ["y"])],
    });
    const answer = answerOrder(chain, ["c", "a", "b"]);
    expect(answer.breaks.map(({ first, critical }) => [first, critical])).toEqual([["b", false]]);
    expect(answer.failedCritical).toBe(true);
  });

  test("breaks stand in step order of the first, then of the second", () => {
    const pairs = ["d e", "d a", "b e", "b a", "c a"].map((both) => {
      const [first, then] = both.split(" ") as [string, string];
      return pair(first, then, []);
    });
    const graph = builtGraph({ steps: ["a", "b", "c", "d", "e"], pairs });
    const { breaks } = answerOrder(graph, ["e", "a", "d", "c", "b"]);
    expect(breaks.map(({ first, then }) => first + then)).toEqual(["ba", "be", "ca", "da", "de"]);
  });
});

test("500 steps, all wrong", () => {
  const size = 500;
  const chain = Array.from({ length: size }, (_, index) => (index + 1 < size ? [index + 1] : []));
  const graph = builtGraph(precedenceOf(chain));
  const answer = answerOrder(graph, [...chain.keys()].reverse().map(stepName));
  expect(answer).toMatchObject({ moves: 499, worst: 499, score: 0, fixed: [...chain.keys()].map(stepName) });
  expect(answer.breaks).toHaveLength(499);
});
