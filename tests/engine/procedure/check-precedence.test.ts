import { describe, expect, test } from "vitest";
import { checkPrecedence, graphFileStepLimit } from "../../../src/engine/procedure/check-precedence.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";
import { anyOrderIsRight, precedes } from "../../../src/engine/procedure/precedes.ts";
import { builtGraph, precedenceOf } from "./sample-orders.ts";

function graph(steps: string, ...pairs: string[]): Precedence {
  return {
    steps: steps.split(" "),
    pairs: pairs.map((pair): Pair => {
      const [first, then] = pair.split(">") as [string, string];
      return { first, then, because: [pair], critical: false };
    }),
  };
}

const repeated = (first: string, then: string) => ({ first, then });

describe("what is wrong with a precedence graph", () => {
  const cases = {
    nothing: [graph("a b c", "a>b", "b>c", "a>c"), []],
    "a step listed twice": [
      graph("a b a", "a>b"),
      [{ kind: "duplicate-step", step: "a", at: 2, earlier: 0 }],
    ],
    "unknown steps": [
      graph("a b", "a>x", "y>b", "z>z"),
      [
        { kind: "unknown-step", step: "x", pair: 0 },
        { kind: "unknown-step", step: "y", pair: 1 },
        { kind: "unknown-step", step: "z", pair: 2 },
      ],
    ],
    "a step before itself": [graph("a b", "b>b"), [{ kind: "self-pair", step: "b", pair: 0 }]],
    "a pair given twice": [
      graph("a b", "a>b", "a>b"),
      [{ kind: "duplicate-pair", ...repeated("a", "b"), pair: 1, earlier: 0 }],
    ],
    "a cycle, whole": [
      graph("d c b a", "a>b", "b>c", "c>a", "d>a"),
      [{ kind: "cycle", steps: ["c", "a", "b"] }],
    ],
    "names that objects have of themselves": [
      graph("constructor __proto__", "constructor>__proto__", "toString>constructor"),
      [{ kind: "unknown-step", step: "toString", pair: 1 }],
    ],
    "several things at once": [
      graph("a b c b", "a>a", "a>b", "b>a", "b>q"),
      [
        { kind: "duplicate-step", step: "b", at: 3, earlier: 1 },
        { kind: "self-pair", step: "a", pair: 0 },
        { kind: "unknown-step", step: "q", pair: 3 },
        { kind: "cycle", steps: ["a", "b"] },
      ],
    ],
  } as const;
  test.each(Object.entries(cases))("%s", (_, [given, problems]) => {
    expect(checkPrecedence(given)).toEqual(problems);
  });

  test("more steps than the limit, and nothing else then", () => {
    const steps = Array.from({ length: graphFileStepLimit + 1 }, () => "same");
    expect(checkPrecedence({ steps, pairs: [] })).toEqual([
      { kind: "too-many-steps", count: 5001, limit: 5000 },
    ]);
    expect(checkPrecedence(graph("a b c", "a>a"), 2)).toEqual([
      { kind: "too-many-steps", count: 3, limit: 2 },
    ]);
  });

  test("a long cycle is found without recursion", () => {
    const size = graphFileStepLimit;
    const ring = precedenceOf(Array.from({ length: size }, (_, index) => [(index + 1) % size]));
    expect(checkPrecedence(ring)).toEqual([{ kind: "cycle", steps: ring.steps }]);
  });
});

describe("building", () => {
  test("a cycle comes back as data", () => {
    expect(graphOf(graph("a b c", "a>b", "b>c", "c>b"))).toEqual({ graph: null, cycle: ["b", "c"] });
    expect(graphOf(graph("a", "a>a")).cycle).toEqual(["a"]);
  });

  test("what the check would have found is a wrong call", () => {
    expect(() => graphOf(graph("a b", "a>x"))).toThrow(RangeError);
    expect(() => graphOf(graph("a b", "x>a"))).toThrow(RangeError);
    expect(() => graphOf(graph("a a"))).toThrow(RangeError);
  });
});

describe("questions to the closure", () => {
  const built = builtGraph(graph("c b a __proto__", "a>b", "b>c"));

  test("what must precede what", () => {
    expect(precedes(built, "a", "c")).toBe(true);
    expect(precedes(built, "c", "a")).toBe(false);
    expect(precedes(built, "a", "a")).toBe(false);
    expect(precedes(built, "__proto__", "a")).toBe(false);
    expect(() => precedes(built, "a", "constructor")).toThrow(RangeError);
  });

  test("a question that cannot be answered wrongly", () => {
    expect(anyOrderIsRight(built, ["__proto__", "c"])).toBe(true);
    expect(anyOrderIsRight(built, [])).toBe(true);
    expect(anyOrderIsRight(built, ["__proto__", "c", "a"])).toBe(false);
  });
});
