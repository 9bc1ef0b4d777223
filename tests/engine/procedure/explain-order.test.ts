import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainOrder } from "../../../src/engine/procedure/explain-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { restrictForAnswers } from "../../../src/engine/procedure/restrict-for-answers.ts";

const pair = (first: string, then: string, ...because: string[]) => ({
  first,
  then,
  because,
  critical: false,
});
const steps = ["plate-off", "cutter-out", "clean", "plate-on"];
const { graph } = graphOf({
  steps,
  pairs: [
    pair("plate-off", "cutter-out", "the plate is still on: it covers the cutter"),
    pair("cutter-out", "clean", "the cutter is worked on after coming off"),
    pair("cutter-out", "plate-on", "once the plate is back on, it covers the cutter"),
    pair("clean", "plate-on", "it is clean"),
    pair(
      "plate-off",
      "plate-on",
      "the plate must be off before going back on",
      "the ring must be off before going back on",
    ),
  ],
});
const name = (step: string) => step;
const told = (precedence = graph!.precedence, ...given: string[]) =>
  explainOrder(graphOf(precedence).graph!, given).told.map(({ first, then }) => `${first} < ${then}`);

describe("what an order is told", () => {
  test("a step behind a refitted plate is told although the pair is redundant", () => {
    const given = ["clean", "plate-off", "plate-on", "cutter-out"];
    expect(explainOrder(graph!, given).breaks).toHaveLength(1);
    expect(told(graph!.precedence, ...given)).toEqual(["cutter-out < clean", "cutter-out < plate-on"]);
    // A question is handed the restricted precedence; it must tell the same.
    expect(told(restrictForAnswers(graph!, steps, name), ...given)).toEqual([
      "cutter-out < clean",
      "cutter-out < plate-on",
    ]);
  });

  test("what follows from other broken pairs is not told again", () => {
    expect(told(graph!.precedence, ...steps.toReversed())).toEqual([
      "plate-off < cutter-out",
      "cutter-out < clean",
      "clean < plate-on",
    ]);
  });

  test("reasons of one kind are one", () => {
    const [only] = explainOrder(graph!, ["plate-on", "plate-off"]).told;
    expect(only!.reasons).toEqual(["the plate and the ring must be off before going back on"]);
  });
});

test("restricted for answers: the same right orders, and each told pair is the wrong way round", () => {
  const some = fc.tuple(fc.subarray(steps, { minLength: 2 }), fc.infiniteStream(fc.double({ noNaN: true })));
  fc.assert(
    fc.property(some, ([chosen, stream]) => {
      const weights = new Map(chosen.map((step) => [step, stream.next().value as number]));
      const given = chosen.toSorted((a, b) => weights.get(a)! - weights.get(b)!);
      const own = graphOf(restrictForAnswers(graph!, chosen, name)).graph!;
      const { told, valid } = explainOrder(own, given);
      // The four steps are a chain: only the written order of any of them is right.
      expect(valid).toBe(given.every((step, at) => step === chosen[at]));
      expect(told.length === 0).toBe(valid);
      for (const { first, then } of told) expect(given.indexOf(then)).toBeLessThan(given.indexOf(first));
    }),
  );
});
