/** The fewest moves, against breadth-first search over all orders that moves lead to. */

import * as fc from "fast-check";
import { expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { restrict } from "../../../src/engine/procedure/restrict.ts";
import {
  acyclicArrows,
  builtGraph,
  isRight,
  precedenceOf,
  reachability,
  shuffled,
  stepName,
} from "./sample-orders.ts";

/** What one move can make of an order: a step put elsewhere, one of `steps` put in, any other taken out. */
function neighbours(order: readonly number[], steps: readonly number[]): number[][] {
  const made: number[][] = [];
  for (const [at, step] of order.entries()) {
    const rest = order.toSpliced(at, 1);
    if (steps.includes(step))
      for (let to = 0; to <= rest.length; to++) made.push(rest.toSpliced(to, 0, step));
    else made.push(rest);
  }
  for (const step of steps.filter((step) => !order.includes(step))) {
    for (let to = 0; to <= order.length; to++) made.push(order.toSpliced(to, 0, step));
  }
  return made;
}

function fewestMoves(arrows: number[][], given: readonly number[]): number {
  const reach = reachability(arrows);
  const steps = [...arrows.keys()];
  const isDone = (order: readonly number[]) =>
    order.length === steps.length && order.every((step) => steps.includes(step)) && isRight(reach, order);
  const seen = new Set([given.join()]);
  let layer: (readonly number[])[] = [given];
  for (let moves = 0; layer.length > 0; moves++) {
    if (layer.some(isDone)) return moves;
    const next: number[][] = [];
    for (const made of layer.flatMap((order) => neighbours(order, steps))) {
      if (seen.has(made.join())) continue;
      seen.add(made.join());
      next.push(made);
    }
    layer = next;
  }
  throw new Error("no right order");
}

test("2,500 random graphs and answers of up to 6 steps", { timeout: 120_000 }, () => {
  const input = acyclicArrows(1, 6).chain((arrows) => fc.tuple(fc.constant(arrows), shuffled(arrows.length)));
  const seen = new Map<number, number>();
  fc.assert(
    fc.property(input, ([arrows, order]) => {
      const { moves } = answerOrder(builtGraph(precedenceOf(arrows)), order.map(stepName));
      expect(moves).toBe(fewestMoves(arrows, order));
      seen.set(moves, (seen.get(moves) ?? 0) + 1);
    }),
    { numRuns: 2500 },
  );
  expect([0, 1, 2, 3].every((moves) => (seen.get(moves) ?? 0) > 50)).toBe(true);
});

test("of some of the steps, as a practice chooses them: up to 6 of 9", { timeout: 120_000 }, () => {
  const input = acyclicArrows(1, 9).chain((arrows) =>
    fc.tuple(
      fc.constant(arrows),
      fc.shuffledSubarray([...arrows.keys()], { minLength: 1, maxLength: Math.min(6, arrows.length) }),
    ),
  );
  let byWay = 0;
  fc.assert(
    fc.property(input, ([arrows, order]) => {
      const steps = order.toSorted((a, b) => a - b);
      const reach = reachability(arrows);
      // What holds among the chosen, by way of the others too.
      const among = steps.map((from) => [...steps.keys()].filter((at) => reach[from]![steps[at]!]));
      const graph = builtGraph(restrict(builtGraph(precedenceOf(arrows)), steps.map(stepName)));
      const { moves } = answerOrder(graph, order.map(stepName));
      const places = order.map((step) => steps.indexOf(step));
      expect(moves).toBe(fewestMoves(among, places));
      if (steps.some((from, at) => among[at]!.some((to) => !arrows[from]!.includes(steps[to]!)))) byWay++;
    }),
    { numRuns: 1000 },
  );
  expect(byWay).toBeGreaterThan(100);
});

test("with steps left out and foreign ones, up to 4 steps", { timeout: 120_000 }, () => {
  const input = acyclicArrows(1, 4).chain((arrows) =>
    fc.tuple(fc.constant(arrows), fc.shuffledSubarray([...arrows.keys(), 7, 8])),
  );
  fc.assert(
    fc.property(input, ([arrows, given]) => {
      const { moves } = answerOrder(builtGraph(precedenceOf(arrows)), given.map(stepName));
      expect(moves).toBe(fewestMoves(arrows, given));
    }),
    { numRuns: 400 },
  );
});
