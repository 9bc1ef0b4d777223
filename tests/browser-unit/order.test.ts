import fc from "fast-check";
import { expect, test } from "vitest";
import { moveItem, placeWords, putAfter, readOrder } from "../../src/browser/arranging/order.ts";
import { newAttempt, readAttempt } from "../../src/browser/practice/attempt.ts";
import { answerOrder } from "../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../src/engine/procedure/graph.ts";

const steps = ["a", "constructor", "c", "d"];
const pair = (first: string, then: string) => ({
  first,
  then,
  because: [`${first} holds ${then}`],
  critical: false,
});
const { graph } = graphOf({ steps, pairs: [pair("a", "constructor"), pair("constructor", "c")] });

test.each([
  [0, 2, ["constructor", "c", "a", "d"]],
  [3, 0, ["d", "a", "constructor", "c"]],
  [1, 1, steps],
])("moving the item at %i to %i", (from, to, expected) => {
  expect(moveItem(steps, from, to)).toEqual(expected);
});

test("an item goes first or directly after another", () => {
  expect(putAfter(steps, "d", null)).toEqual(["d", "a", "constructor", "c"]);
  expect(putAfter(steps, "a", "c")).toEqual(["constructor", "c", "a", "d"]);
});

test("the moves of an order answer, made one by one, end in the order it mends to", () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(steps, { minLength: 4 }), (given) => {
      const answer = answerOrder(graph!, given);
      let order: readonly string[] = given;
      for (const { step, after } of answer.fix) order = putAfter(order, step, after);
      expect(order).toEqual(answer.fixed);
      expect(answerOrder(graph!, order).valid).toBe(true);
    }),
  );
});

test.each([
  [undefined],
  [null],
  ["abcd"],
  [["a"]],
  [["a", "a", "c", "d"]],
  [["a", "constructor", "c", 4]],
  [[...steps, "e"]],
])("%j is no order of the steps", (kept) => {
  expect(readOrder(kept, steps)).toBeUndefined();
  expect(readAttempt({ order: kept }, graph!)).toBeUndefined();
});

test("where steps are mixed in, some may be left out, none may stand twice and none be foreign", () => {
  const read = (order: readonly string[]) => readAttempt({ order }, graph!, ["stray"])?.order;
  expect(read(["stray", "d"])).toEqual(["stray", "d"]);
  expect(read([])).toEqual([]);
  expect(read(["a", "a"])).toBeUndefined();
  expect(read(["toString"])).toBeUndefined();
});

test("an attempt with steps mixed in begins with all of them", () => {
  const { order } = newAttempt(graph!, "seed", ["stray", "__proto__"]);
  expect([...order].sort()).toEqual([...steps, "stray", "__proto__"].sort());
});

test("what was kept is read again", () => {
  const attempt = { order: steps.toReversed(), shown: true, right: false };
  expect(readAttempt(JSON.parse(JSON.stringify(attempt)), graph!)).toEqual(attempt);
});

test("no attempt begins right, and the same seed begins the same", () => {
  fc.assert(
    fc.property(fc.string(), (seed) => {
      const { order } = newAttempt(graph!, seed);
      expect([...order].sort()).toEqual([...steps].sort());
      expect(answerOrder(graph!, order).valid).toBe(false);
      expect(newAttempt(graph!, seed).order).toEqual(order);
    }),
  );
});

test("a move is said with the place counted from 1", () => {
  expect(placeWords("Unscrew the board", 2, 7)).toBe("Unscrew the board: now 3 of 7");
});
