/** Which orders are accepted, how many they are, and that neither depends on what steps are called or where they are listed. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { members } from "../../../src/engine/procedure/bits.ts";
import { countOrders } from "../../../src/engine/procedure/count-orders.ts";
import { restrict } from "../../../src/engine/procedure/restrict.ts";
import {
  acyclicArrows,
  builtGraph,
  permutations,
  precedenceOf,
  shuffled,
  stepName,
} from "./sample-orders.ts";

/** The right orders, one step after another: each comes once all arrows that lead to it start from steps done. */
function enumerated(arrows: readonly (readonly number[])[]): number[][] {
  let orders: number[][] = [[]];
  for (const _ of arrows) {
    orders = orders.flatMap((order) =>
      [...arrows.keys()]
        .filter((step) => !order.includes(step))
        .filter((step) => arrows.every((heads, tail) => !heads.includes(step) || order.includes(tail)))
        .map((step) => [...order, step]),
    );
  }
  return orders;
}

test("every order that can be enumerated is accepted, every other one refused, and they are counted", () => {
  let [accepted, refused] = [0, 0];
  fc.assert(
    fc.property(acyclicArrows(0, 5), (arrows) => {
      const graph = builtGraph(precedenceOf(arrows));
      const right = new Set(enumerated(arrows).map(String));
      const all = permutations([...arrows.keys()]);
      for (const order of all) {
        const { valid } = answerOrder(graph, order.map(stepName));
        expect(valid).toBe(right.has(String(order)));
        if (valid) accepted++;
        else refused++;
      }
      expect(countOrders(graph).orders).toBe(BigInt(right.size));
    }),
    { numRuns: 60 },
  );
  expect(Math.min(accepted, refused)).toBeGreaterThan(100);
});

test("no order is accepted that holds a foreign step, or lacks one", () => {
  fc.assert(
    fc.property(acyclicArrows(1, 6), fc.nat(), (arrows, dice) => {
      const graph = builtGraph(precedenceOf(arrows));
      const right = enumerated(arrows)[0]!.map(stepName);
      expect(answerOrder(graph, right).valid).toBe(true);
      const at = dice % right.length;
      expect(answerOrder(graph, right.toSpliced(at, 1)).valid).toBe(false);
      expect(answerOrder(graph, right.toSpliced(at, 0, "constructor")).valid).toBe(false);
    }),
    { numRuns: 100 },
  );
});

const names = ["constructor", "__proto__", "toString", "hasOwnProperty", "", "0", "10", "9", "then", "é"];

test("closure, reduction and count are the same under other names, listed in another order", () => {
  const input = acyclicArrows(0, 10).chain((arrows) =>
    fc.tuple(fc.constant(arrows), shuffled(arrows.length), fc.shuffledSubarray(names, { minLength: 10 })),
  );
  fc.assert(
    fc.property(input, ([arrows, listed, called]) => {
      const plain = precedenceOf(arrows);
      const rename = new Map(plain.steps.map((step, index) => [step, called[index]!]));
      const named = precedenceOf(arrows, undefined, (index) => called[index]!);
      const steps = listed.map((index) => called[index]!);
      const [graph, other] = [builtGraph(plain), builtGraph({ steps, pairs: named.pairs.toReversed() })];
      const pairsOf = (of: typeof graph, rows: (place: number) => readonly number[]) =>
        of.precedence.steps.flatMap((step, place) =>
          rows(place).map((then) => [step, of.precedence.steps[then]!]),
        );
      const closure = (of: typeof graph) => pairsOf(of, (place) => members(of.poset.after, place)).sort();
      const renamed = (pairs: string[][]) =>
        pairs.map((pair) => pair.map((step) => rename.get(step)!)).sort();
      expect(closure(other)).toEqual(renamed(closure(graph)));
      const reduction = (of: typeof graph) =>
        restrict(of, of.precedence.steps)
          .pairs.map(({ first, then }) => [first, then])
          .sort();
      expect(reduction(other)).toEqual(renamed(reduction(graph)));
      expect(countOrders(other)).toEqual(countOrders(graph));
    }),
    { numRuns: 150 },
  );
});
