/** What holds of every answer, by brute force and by plain words of the rules. */

import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerOrder, type Move } from "../../../src/engine/procedure/answer-order.ts";
import {
  acyclicArrows,
  builtGraph,
  isRight,
  permutations,
  precedenceOf,
  reachability,
  shuffled,
  stepName,
  subsets,
} from "./sample-orders.ts";

/** Makes the moves one after the other on what was given, less the foreign steps. */
function applied(given: readonly string[], extra: readonly string[], fix: readonly Move[]): string[] {
  let order = given.filter((step) => !extra.includes(step));
  for (const { step, after } of fix) {
    order = order.filter((other) => other !== step);
    order.splice(after === null ? 0 : order.indexOf(after) + 1, 0, step);
  }
  return order;
}

const answers = acyclicArrows(1, 8).chain((arrows) =>
  fc.tuple(fc.constant(arrows), shuffled(arrows.length), fc.subarray([...arrows.keys()])),
);

describe("identities of any answer", () => {
  test("complete, or with steps left out and foreign ones", () => {
    fc.assert(
      fc.property(answers, fc.nat({ max: 2 }), ([arrows, order, keep], foreign) => {
        const reach = reachability(arrows);
        const graph = builtGraph(precedenceOf(arrows));
        const known = order.filter((step) => keep.includes(step));
        const extra = ["constructor", "__proto__"].slice(0, foreign);
        const given = [...extra.slice(0, 1), ...known.map(stepName), ...extra.slice(1)];
        const answer = answerOrder(graph, given);
        expect(answer.extra).toEqual(extra);
        expect(answer.missing).toEqual(arrows.flatMap((_, i) => (keep.includes(i) ? [] : [stepName(i)])));
        expect(answer.valid).toBe(answer.moves === 0);
        expect(answer.valid).toBe(foreign === 0 && known.length === arrows.length && isRight(reach, known));
        expect(answer.breaks.length === 0).toBe(isRight(reach, known));
        expect(answer.score).toBeGreaterThanOrEqual(0);
        expect(answer.score).toBeLessThanOrEqual(1);
        expect(answer.fix.length + foreign).toBe(answer.moves);
        expect(applied(given, extra, answer.fix)).toEqual(answer.fixed);
        const places = new Map(arrows.map((_, index) => [stepName(index), index]));
        const fixed = answer.fixed.map((step) => places.get(step)!);
        expect(fixed.toSorted((a, b) => a - b)).toEqual([...arrows.keys()]);
        expect(isRight(reach, fixed)).toBe(true);
      }),
      { numRuns: 600 },
    );
  });

  test("the worst is what the worst of all orders needs, and a right order reversed needs it", () => {
    fc.assert(
      fc.property(acyclicArrows(1, 5), (arrows) => {
        const graph = builtGraph(precedenceOf(arrows));
        const all = permutations([...arrows.keys()]);
        const moves = all.map((order) => answerOrder(graph, order.map(stepName)).moves);
        const { worst } = answerOrder(graph, []);
        expect(Math.max(...moves)).toBe(worst);
        const reach = reachability(arrows);
        for (const right of all.filter((order) => isRight(reach, order))) {
          expect(answerOrder(graph, right.toReversed().map(stepName)).moves).toBe(worst);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("breaks of a complete answer are the reversed pairs of the transitive reduction", () => {
    fc.assert(
      fc.property(answers, ([arrows, order]) => {
        const reach = reachability(arrows);
        const expected = arrows.flatMap((_, a) =>
          arrows.flatMap((_, b) => {
            const direct = reach[a]![b] && !reach[a]!.some((there, c) => there && reach[c]![b]);
            return direct && order.indexOf(b) < order.indexOf(a) ? [`${a} before ${b}`] : [];
          }),
        );
        const { breaks } = answerOrder(builtGraph(precedenceOf(arrows)), order.map(stepName));
        expect(breaks.map(({ because }) => because)).toEqual(expected);
      }),
      { numRuns: 300 },
    );
  });
});

describe("one answer, whoever computes it", () => {
  test("steps may be named anyhow, pairs stand in any order, and be redundant", () => {
    const names = ["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf", "", "then", "0"];
    const rename = new Map(names.map((name, index) => [stepName(index), name]));
    fc.assert(
      fc.property(answers, ([arrows, order]) => {
        const plain = answerOrder(builtGraph(precedenceOf(arrows)), order.map(stepName));
        const reach = reachability(arrows);
        const closure = reach
          .map((row) => row.flatMap((there, head) => (there ? [head] : [])))
          .map((l) => l.reverse());
        const other = precedenceOf(closure, undefined, (index) => names[index]!);
        const graph = builtGraph({ steps: other.steps, pairs: other.pairs.toReversed() });
        const named = answerOrder(
          graph,
          order.map((index) => names[index]!),
        );
        expect(named.fixed).toEqual(plain.fixed.map((step) => rename.get(step)));
        expect(named.fix.map(({ step }) => step)).toEqual(plain.fix.map(({ step }) => rename.get(step)));
        expect(named.breaks.map(({ first, then }) => [first, then])).toEqual(
          plain.breaks.map(({ first, then }) => [rename.get(first), rename.get(then)]),
        );
        expect([named.moves, named.worst, named.score]).toEqual([plain.moves, plain.worst, plain.score]);
      }),
      { numRuns: 300 },
    );
  });

  test("the kept steps are, of all largest conflict-free sets, the one that no step of another stands below", () => {
    // The largest antichains of a partial order are a lattice (Dilworth 1960), so it has a least one.
    fc.assert(
      fc.property(answers, ([arrows, order]) => {
        const reach = reachability(arrows);
        const { fix } = answerOrder(builtGraph(precedenceOf(arrows)), order.map(stepName));
        const moved = fix.map(({ step }) => step);
        const kept = order.filter((step) => !moved.includes(stepName(step)));
        // x is above y: y must come before x, yet is given after it.
        const above = (x: number, y: number) => reach[y]![x]! && order.indexOf(x) < order.indexOf(y);
        const free = subsets(order.length).filter((set) => !set.some((x) => set.some((y) => above(x, y))));
        const most = Math.max(...free.map((set) => set.length));
        expect(kept).toHaveLength(most);
        for (const set of free.filter((set) => set.length === most)) {
          for (const step of set) expect(kept.some((k) => k === step || above(step, k))).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("the mended order takes again and again the available step that was given earliest", () => {
    fc.assert(
      fc.property(answers, ([arrows, order, keep]) => {
        const given = order.filter((step) => keep.includes(step));
        const reach = reachability(arrows);
        const { fix, fixed } = answerOrder(builtGraph(precedenceOf(arrows)), given.map(stepName));
        const kept = given.filter((step) => !fix.some((move) => move.step === stepName(step)));
        const wanted = [...given, ...[...arrows.keys()].filter((step) => !given.includes(step))];
        const done: number[] = [];
        while (done.length < wanted.length) {
          const waits = (step: number, other: number) =>
            reach[other]![step]! ||
            (kept.includes(step) && kept.indexOf(other) >= 0 && kept.indexOf(other) < kept.indexOf(step));
          done.push(
            wanted.find(
              (step) => !done.includes(step) && wanted.every((o) => done.includes(o) || !waits(step, o)),
            )!,
          );
        }
        expect(fixed).toEqual(done.map(stepName));
      }),
      { numRuns: 300 },
    );
  });
});
