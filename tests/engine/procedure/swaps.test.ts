import { expect, test } from "vitest";
import { graphOfProcedure } from "../../../src/engine/procedure/graph-of-procedure.ts";
import type { Step } from "../../../src/engine/procedure/procedure.ts";
import { swapsOf } from "../../../src/engine/procedure/swaps.ts";
import { turnedRound } from "../../../src/engine/procedure/turned-round.ts";
import { act, emptyStep, part, procedureOf } from "./random-procedure.ts";

/** Work on the same bed is bound to the written order. */
const onBed = (id: string, change: Partial<Step> = {}): Step =>
  emptyStep(id, { acts: [act("work", "bed")], ...change });
const mayGoWith = (id: string, because: string) => ({ maySwap: new Map([[id, because]]) });

function swapsAmong(...steps: Step[]) {
  const procedure = procedureOf([part("bed")], [], steps);
  return swapsOf(procedure, graphOfProcedure(procedure).graph!);
}

test("a pair that is lifted, with the author's reason, whichever step names the other", () => {
  const swap = { first: "constructor", then: "b", because: "either will do" };
  expect(swapsAmong(onBed("constructor"), onBed("b", mayGoWith("constructor", "either will do")))).toEqual([
    swap,
  ]);
  expect(swapsAmong(onBed("constructor", mayGoWith("b", "either will do")), onBed("b"))).toEqual([swap]);
});

test("none where no rule binds the two, where after demands the pair, or where it holds by way of another step", () => {
  expect(swapsAmong(onBed("a"), emptyStep("b", mayGoWith("a", "no rule")))).toEqual([]);
  const after = new Map([["a", { because: "wet paint", critical: false }]]);
  expect(swapsAmong(onBed("a"), onBed("b", { ...mayGoWith("a", "demanded"), after }))).toEqual([]);
  expect(swapsAmong(onBed("a"), onBed("m"), onBed("b", mayGoWith("a", "m comes between")))).toEqual([]);
});

test("of some pairs, those that stand the other way round; a step that is missing counts for nothing", () => {
  const swap = (first: string, then: string) => ({ first, then, because: "" });
  const swaps = [swap("a", "b"), swap("b", "c"), swap("a", "x"), swap("x", "a")];
  expect(turnedRound(swaps, ["b", "a", "c"])).toEqual([swap("a", "b")]);
  expect(turnedRound(swaps, ["a", "b", "c"])).toEqual([]);
});
