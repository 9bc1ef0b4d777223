import { expect, test } from "vitest";
import { performSteps } from "../../../src/engine/procedure/perform.ts";
import { performingGraph } from "../../../src/engine/procedure/performing-graph.ts";
import { summaryOf } from "../../../src/engine/procedure/run-summary.ts";

const steps = ["let-down", "board-off", "motor-out", "clean"];
const pair = (first: string, then: string, critical = false) => ({
  ...{ first, then, critical, because: [`${first} before ${then}`] },
});
const graph = performingGraph({
  steps,
  pairs: [pair("let-down", "board-off", true), pair("board-off", "motor-out"), pair("motor-out", "clean")],
});
const summary = (chosen: string) => summaryOf(steps, performSteps(graph, chosen.split(" "))!);

test("a run without a fault leaves nothing to read again", () => {
  expect(summary("let-down board-off motor-out clean")).toEqual({
    ...{ done: steps, isOver: true, refusals: 0, stops: 0, refused: [], stopped: [], again: [] },
  });
});

test("refusals and stops are counted apart, by step, with what was missing at first", () => {
  const found = summary("board-off let-down clean motor-out clean board-off motor-out clean");
  expect(found.isOver).toBe(true);
  expect([found.refusals, found.stops]).toEqual([3, 1]);
  expect(found.stopped).toEqual([
    { step: "board-off", times: 1, pairs: [pair("let-down", "board-off", true)] },
  ]);
  expect(found.refused).toEqual([
    { step: "clean", times: 2, pairs: [pair("motor-out", "clean")] },
    { step: "motor-out", times: 1, pairs: [pair("board-off", "motor-out")] },
  ]);
  expect(found.again).toEqual(steps);
});

test("of a stop by a step further on, the first steps of other pairs are not to be read again", () => {
  const found = summary("clean");
  expect(found).toMatchObject({ isOver: false, done: [], stops: 1, refusals: 0, again: ["clean"] });
});

test("it follows from the steps chosen alone, as JSON carries them", () => {
  const chosen = "clean board-off let-down board-off clean motor-out clean";
  const carried = JSON.parse(JSON.stringify(performSteps(graph, chosen.split(" "))!)) as { step: string }[];
  const again = performSteps(
    graph,
    carried.map(({ step }) => step),
  )!;
  expect(summaryOf(steps, again)).toEqual(summary(chosen));
});
