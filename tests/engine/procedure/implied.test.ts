/** Pairs of `after` that say nothing new, and steps that nothing binds. */
import { describe, expect, test } from "vitest";
import { derivePrecedence } from "../../../src/engine/procedure/derive.ts";
import { freeSteps } from "../../../src/engine/procedure/free-steps.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { impliedAfters } from "../../../src/engine/procedure/implied.ts";
import type { Step } from "../../../src/engine/procedure/procedure.ts";

const step = (id: string, after: Record<string, boolean> = {}, critical = false): Step => ({
  ...{ id, title: id, acts: [], makes: new Map(), through: [], while: new Map(), maySwap: new Map() },
  after: new Map(
    Object.entries(after).map(([first, isCritical]) => [first, { because: "so", critical: isCritical }]),
  ),
  ...{ critical, time: 0, wait: 0, stop: false },
});

function implied(...steps: Step[]) {
  const machine = { parts: new Map(), fasteners: new Map(), states: new Map(), leaves: new Map() };
  return impliedAfters(graphOf(derivePrecedence({ ...machine, steps })).graph!, steps);
}

describe("an after is implied", () => {
  test("where other pairs lead the same way, and the way is told", () => {
    expect(implied(step("a"), step("b", { a: false }), step("c", { b: false, a: false }))).toEqual([
      { step: "c", first: "a", way: ["a", "b", "c"] },
    ]);
  });

  test("not where it is the only way", () => {
    expect(implied(step("a"), step("b"), step("c", { a: false, b: false }))).toEqual([]);
  });

  test("not where it alone makes the pair critical", () => {
    expect(implied(step("a"), step("b", { a: false }), step("c", { b: false, a: true }))).toEqual([]);
  });

  test("where it is marked critical and the way is critical from its first pair on", () => {
    const [found] = implied(step("a"), step("b", { a: true }), step("c", { b: false, a: true }));
    expect(found).toMatchObject({ step: "c", first: "a" });
  });

  test("where its first step is critical, which makes all its pairs so", () => {
    const way = implied(step("a", {}, true), step("b", { a: false }), step("c", { b: false, a: true }));
    expect(way).toHaveLength(1);
  });
});

test("steps that are bound to no other", () => {
  const { graph } = graphOf({
    steps: ["a", "constructor", "b", "c"],
    pairs: [{ first: "a", then: "b", because: ["so"], critical: false }],
  });
  expect(freeSteps(graph!)).toEqual(["constructor", "c"]);
});
