/** Luck in a practice, against drawing every lot. */
import { expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { luckOf, strayCount } from "../../../src/engine/procedure/luck.ts";
import { restrict } from "../../../src/engine/procedure/restrict.ts";

const pair = (first: string, then: string) => ({ first, then, because: ["so"], critical: false });
const graph = graphOf({
  steps: ["a", "b", "constructor", "d", "e"],
  pairs: [pair("a", "b"), pair("b", "d"), pair("constructor", "d")],
}).graph!;

/** All ways to draw `count` of the items in an order. */
function draws(items: readonly string[], count: number): string[][] {
  if (count === 0) return [[]];
  return items.flatMap((item) =>
    draws(
      items.filter((other) => other !== item),
      count - 1,
    ).map((rest) => [item, ...rest]),
  );
}

test.each([
  [["a", "b", "constructor", "d", "e"], []],
  [["a", "d", "constructor"], []],
  [["a", "d", "constructor"], ["e"]],
  [
    ["a", "b"],
    ["d", "e"],
  ],
  [["e", "a"], ["b"]],
])("%j with %j mixed in", (asked, strays) => {
  const all = draws([...asked, ...strays], asked.length);
  const own = graphOf(restrict(graph, asked)).graph!;
  const right = all.filter((given) => answerOrder(own, given).valid).length;
  const luck = luckOf(graph, asked, strays.length)!;
  expect([luck.orders, luck.lots]).toEqual([BigInt(right), BigInt(all.length)]);
  expect(luck.chance).toBeCloseTo(right / all.length, 12);
});

test("too many ways to stand half done are not counted: a fence of 40 steps has Fibonacci(42) down-sets", () => {
  const steps = Array.from({ length: 40 }, (_, index) => `s${index}`);
  const fence = steps
    .slice(1)
    .map((step, index) => (index % 2 === 0 ? pair(steps[index]!, step) : pair(step, steps[index]!)));
  expect(luckOf(graphOf({ steps, pairs: fence }).graph!, steps, 0)).toBeNull();
});

test("how many strays are needed: 2 orders of 3 steps are 2 in 6, in 24, in 60", () => {
  expect(strayCount(2n, 3, 5, 0.4)).toBe(0);
  expect(strayCount(2n, 3, 5, 0.1)).toBe(1);
  expect(strayCount(2n, 3, 5, 0.05)).toBe(2);
  expect(strayCount(2n, 3, 1, 0.05)).toBeNull();
});
