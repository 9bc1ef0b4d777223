import { describe, expect, test } from "vitest";
import { moveWords } from "../../src/browser/practice/mending.ts";
import { verdictOn } from "../../src/browser/practice/verdict.ts";
import { answerOrder } from "../../src/engine/procedure/answer-order.ts";
import { graphOf } from "../../src/engine/procedure/graph.ts";

const steps = ["down", "board", "motor", "wash"];
const { graph } = graphOf({
  steps,
  pairs: [
    { first: "down", then: "board", because: ["the motor runs away"], critical: true },
    {
      first: "board",
      then: "motor",
      because: ["the board covers the motor", "the screws hold it."],
      critical: false,
    },
  ],
});
const titles = new Map([
  ["down", "Let it down"],
  ["board", "Lift the board"],
  ["motor", "Take the motor out"],
  ["wash", "Wash it"],
]);
const title = (step: string) => titles.get(step)!;
const verdict = (...given: string[]) => verdictOn(answerOrder(graph!, given), given, steps, title);

describe("the verdict", () => {
  test("on the written order", () => {
    expect(verdict(...steps)).toEqual({
      headline: "This order is right.",
      detail: "It is the order of the operation sheet.",
      lines: [],
    });
  });

  test("on another right order", () => {
    const { headline, detail } = verdict("wash", "down", "board", "motor");
    expect(headline).toBe("This order is right.");
    expect(detail).toContain("works just as well");
  });

  test("names what must come before what, and why, and the fewest moves", () => {
    const { headline, detail, lines } = verdict("down", "motor", "board", "wash");
    expect(headline).toBe("This order is not right yet.");
    expect(detail).toBe("One pair is the wrong way round. 1 move mends it.");
    expect(lines).toEqual([
      {
        text: "“Lift the board” comes before “Take the motor out”: the board covers the motor; the screws hold it.",
        critical: false,
      },
    ]);
  });

  test("says in words when a critical pair is broken", () => {
    const { headline, lines } = verdict("motor", "board", "down", "wash");
    expect(headline).toContain("critical");
    expect(lines.map(({ critical }) => critical)).toEqual([true, false]);
  });
});

test("a move in words", () => {
  expect(moveWords({ step: "motor", after: "board" }, title)).toBe(
    "“Take the motor out” goes directly after “Lift the board”",
  );
  expect(moveWords({ step: "motor", after: null }, title)).toBe("“Take the motor out” goes first");
});
