import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import type { Pair, Precedence } from "../../../src/engine/procedure/precedence.ts";
import { restrict } from "../../../src/engine/procedure/restrict.ts";
import { acyclicArrows, builtGraph, precedenceOf, reachability, stepName } from "./sample-orders.ts";

const strip: Precedence = {
  steps: ["lid-off", "let-down", "belt-off", "motor-off", "constructor"],
  pairs: [
    pair("lid-off", "belt-off", ["the lid covers the belt"]),
    pair("let-down", "motor-off", ["a motor under power can run away"], true),
    pair("belt-off", "motor-off", ["the belt ties the motor", "the belt would tear"]),
    pair("lid-off", "motor-off", ["the lid covers the motor"]),
    pair("motor-off", "constructor", []),
  ],
};

function pair(first: string, then: string, because: string[], critical = false): Pair {
  return { first, then, because, critical };
}

describe("some steps of a procedure", () => {
  const graph = builtGraph(strip);

  test("a direct pair keeps its reasons, whatever steps are left out", () => {
    expect(restrict(graph, ["motor-off", "let-down", "belt-off"])).toEqual({
      steps: ["let-down", "belt-off", "motor-off"],
      pairs: [
        pair("let-down", "motor-off", ["a motor under power can run away"], true),
        pair("belt-off", "motor-off", ["the belt ties the motor", "the belt would tear"]),
      ],
    });
  });

  test("a pair by way of a step left out is explained along the way", () => {
    expect(restrict(graph, ["lid-off", "motor-off", "constructor"]).pairs[0]).toEqual(
      pair("lid-off", "motor-off", [
        "lid-off → belt-off: the lid covers the belt",
        "belt-off → motor-off: the belt ties the motor",
        "belt-off → motor-off: the belt would tear",
      ]),
    );
  });

  test("steps are named by title where titles are given; a critical pair reaches on; a pair may lack a reason", () => {
    const titles = new Map([["let-down", "Let the spring down"]]);
    expect(restrict(graph, ["constructor", "let-down"], (step) => titles.get(step) ?? step).pairs).toEqual([
      pair(
        "let-down",
        "constructor",
        ["Let the spring down → motor-off: a motor under power can run away", "motor-off → constructor"],
        true,
      ),
    ]);
  });

  test("all steps: the reduction", () => {
    const { pairs } = restrict(graph, strip.steps);
    expect(pairs.map(({ first, then }) => `${first} ${then}`)).toEqual([
      "lid-off belt-off",
      "let-down motor-off",
      "belt-off motor-off",
      "motor-off constructor",
    ]);
  });

  test("an unknown step is a wrong call", () => {
    expect(() => restrict(graph, ["__proto__"])).toThrow(RangeError);
  });

  test("the reason is read along a shortest way", () => {
    const long = precedenceOf([[1, 4], [2], [3], [5], [5], []]);
    expect(restrict(builtGraph(long), [stepName(0), stepName(5)]).pairs[0]!.because).toEqual([
      "step-0 → step-4: 0 before 4",
      "step-4 → step-5: 4 before 5",
    ]);
  });
});

/** A graph, a third of its pairs critical, and some of its steps in any order. */
const input = acyclicArrows(1, 12).chain((arrows) =>
  fc.tuple(
    fc.constant(arrows),
    fc.infiniteStream(fc.nat({ max: 2 })).map((dice) => arrows.map(() => [...dice.take(arrows.length)])),
    fc.shuffledSubarray([...arrows.keys()]),
  ),
);

/** The rule word for word: some critical direct pair (a, c) has c = b or c before b. */
function criticalByRule(
  arrows: number[][],
  marked: (a: number, b: number) => boolean,
  a: number,
  b: number,
): boolean {
  const reach = reachability(arrows);
  return arrows[a]!.some((c) => marked(a, c) && (c === b || reach[c]![b]));
}

describe("of any graph", () => {
  test("the closure among the chosen stays, every other pair is needed, critical is what the rule says", () => {
    fc.assert(
      fc.property(input, ([arrows, dice, chosen]) => {
        const marked = (a: number, b: number) => dice[a]![b] === 0;
        const part = restrict(builtGraph(precedenceOf(arrows, marked)), chosen.map(stepName));
        const steps = chosen.toSorted((a, b) => a - b);
        expect(part.steps).toEqual(steps.map(stepName));
        const place = new Map(part.steps.map((step, index) => [step, index]));
        const partArrows: number[][] = part.steps.map(() => []);
        for (const { first, then } of part.pairs) partArrows[place.get(first)!]!.push(place.get(then)!);
        const reach = reachability(arrows);
        const partReach = reachability(partArrows);
        for (const [a, from] of steps.entries()) {
          for (const [b, to] of steps.entries()) {
            expect(partReach[a]![b]).toBe(reach[from]![to]);
            const rule = reach[from]![to]! && criticalByRule(arrows, marked, from, to);
            const kept = part.pairs.some(
              (found) =>
                found.first === stepName(from) &&
                found.critical &&
                (place.get(found.then) === b || partReach[place.get(found.then)!]![b]),
            );
            expect(kept).toBe(rule);
          }
        }
        for (const found of part.pairs) {
          const [a, b] = [place.get(found.first)!, place.get(found.then)!];
          const redundant = partReach[a]!.some((there, between) => there && partReach[between]![b]);
          const needed = !part.pairs.some(
            (other) => other.first === found.first && other.critical && partReach[place.get(other.then)!]![b],
          );
          expect(!redundant || (found.critical && needed)).toBe(true);
          expect(found.critical).toBe(criticalByRule(arrows, marked, steps[a]!, steps[b]!));
        }
      }),
      { numRuns: 400 },
    );
  });

  test("an order of the chosen steps breaks and fails by the restricted graph as by the whole one", () => {
    let failed = 0;
    fc.assert(
      fc.property(input, ([arrows, dice, chosen]) => {
        const marked = (a: number, b: number) => dice[a]![b] === 0;
        const whole = builtGraph(precedenceOf(arrows, marked));
        const given = chosen.map(stepName);
        const byPart = answerOrder(builtGraph(restrict(whole, given)), given);
        const byWhole = answerOrder(whole, given);
        expect(byPart.failedCritical).toBe(byWhole.failedCritical);
        expect(byPart.breaks).toEqual(byWhole.breaks);
        if (byPart.failedCritical) failed++;
      }),
      { numRuns: 400 },
    );
    expect(failed).toBeGreaterThan(20);
  });
});
