import { describe, expect, test } from "vitest";
import { answerOrder } from "../../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import type { Precedence } from "../../../src/engine/procedure/precedence.ts";
import { letterOf, slipsOf } from "../../../src/engine/procedure/slips.ts";

const pair = (first: string, then: string) => ({ first, then, because: ["so"], critical: false });
/** Two chains: lid before wheel before pin, and lamp before cord. */
const precedence: Precedence = {
  steps: ["lid", "wheel", "pin", "lamp", "cord"],
  pairs: [pair("lid", "wheel"), pair("wheel", "pin"), pair("lamp", "cord")],
};

describe("slips of a practice", () => {
  const { slips, key } = slipsOf(precedence, ["kettle"], "mill@2:strip");
  const steps = new Map(slips.map(({ letter, step }) => [letter, step]));

  test("each step and each that does not belong has a letter of its own, from A on", () => {
    expect(slips.map(({ letter }) => letter)).toEqual(["A", "B", "C", "D", "E", "F"]);
    expect(slips.map(({ step }) => step).sort()).toEqual(["cord", "kettle", "lamp", "lid", "pin", "wheel"]);
  });

  test("the key lays aside what does not belong and gives the written order, by letters", () => {
    expect(key.leftOut.map((letter) => steps.get(letter))).toEqual(["kettle"]);
    expect(key.order.map((letter) => steps.get(letter))).toEqual(["lid", "wheel", "pin", "lamp", "cord"]);
  });

  test("the key's pairs are the practice's, by letters", () => {
    expect(key.pairs.map(({ letters }) => letters.map((letter) => steps.get(letter)))).toEqual([
      ["lid", "wheel"],
      ["wheel", "pin"],
      ["lamp", "cord"],
    ]);
  });

  test("it says how many orders are right: 5! / (3! · 2!) ways to merge chains of three and two", () => {
    expect(key.orders).toBe(10n);
  });

  test("the same seed gives the same letters", () => {
    expect(slipsOf(precedence, ["kettle"], "mill@2:strip").slips).toEqual(slips);
  });
});

test("laid out by their letters, slips are in no right order, whatever the seed", () => {
  const { graph } = graphOf(precedence);
  const seeds = Array.from({ length: 200 }, (_, seed) => `seed ${seed}`);
  const right = seeds.filter(
    (seed) =>
      answerOrder(
        graph!,
        slipsOf(precedence, [], seed).slips.map(({ step }) => step),
      ).valid,
  );
  expect(right).toEqual([]);
});

test("what goes round in a circle has no slips", () => {
  const circle = { steps: ["a", "b"], pairs: [pair("a", "b"), pair("b", "a")] };
  expect(() => slipsOf(circle, [], "x")).toThrow(RangeError);
});

test.each([
  [0, "A"],
  [25, "Z"],
  [26, "AA"],
  [27, "AB"],
  [51, "AZ"],
  [52, "BA"],
  [701, "ZZ"],
  [702, "AAA"],
])("letter %i is %s, as columns of a table are lettered", (place, letter) => {
  expect(letterOf(place)).toBe(letter);
});
