import { describe, expect, test } from "vitest";
import { moveWords } from "../../src/browser/arranging/move-words.ts";
import { verdictOn } from "../../src/browser/practice/verdict.ts";
import { explainOrder } from "../../src/engine/procedure/explain-order.ts";
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
  ["polish", "Polish it"],
]);
const title = (step: string) => titles.get(step)!;
const verdict = (...given: string[]) => verdictOn(explainOrder(graph!, given), given, steps, title);

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

  test("on one that differs only where the author allows it: which pair, and why", () => {
    const swaps = [
      { first: "motor", then: "wash", because: "the works can be washed in or out" },
      { first: "down", then: "polish", because: "is not asked here" },
    ];
    const on = (...given: string[]) => verdictOn(explainOrder(graph!, given), given, steps, title, swaps);
    expect(on("down", "board", "wash", "motor")).toEqual({
      headline: "This order is right.",
      detail:
        "It differs from the operation sheet only in one pair of steps that may change places, as its author says.",
      lines: [
        {
          text: "“Wash it” before “Take the motor out”: the works can be washed in or out.",
          reasons: [],
          critical: false,
        },
      ],
    });
    // Free of "board" as well, which needs no leave of the author's.
    const more = on("down", "wash", "board", "motor");
    expect(more.detail).toMatch(/works just as well.*one pair of steps that may change places/);
    expect(more.lines).toHaveLength(1);
    expect(on(...steps).lines).toEqual([]);
  });

  test("names what must come before what, and why, and the fewest moves", () => {
    const { headline, detail, lines } = verdict("down", "motor", "board", "wash");
    expect(headline).toBe("This order is not right yet.");
    expect(detail).toBe("One pair is the wrong way round. 1 move mends it.");
    expect(lines).toEqual([
      {
        text: "“Lift the board” must come before “Take the motor out”:",
        reasons: ["The board covers the motor.", "The screws hold it."],
        critical: false,
      },
    ]);
  });

  test("says in words when a critical pair is broken", () => {
    const { headline, lines } = verdict("motor", "board", "down", "wash");
    expect(headline).toContain("critical");
    expect(lines.map(({ critical }) => critical)).toEqual([true, false]);
    expect(lines[0]!.text).toBe("“Let it down” must come before “Lift the board”: the motor runs away.");
  });
});

describe("the verdict where steps that do not belong are mixed in", () => {
  test("counts what is left out and what does not belong, and names each", () => {
    const { headline, detail, lines } = verdict("down", "polish", "motor");
    expect(headline).toBe("This order is not right yet.");
    expect(detail).toBe("1 step does not belong here. 2 steps are missing. 3 moves mend it.");
    expect(lines.map(({ text }) => text)).toEqual([
      "“Polish it” does not belong to this job.",
      "“Lift the board” belongs to this job and was left out.",
      "“Wash it” belongs to this job and was left out.",
    ]);
  });

  test("a right order with a foreign step in it is wrong, and one move mends it", () => {
    const { detail } = verdict("down", "board", "polish", "motor", "wash");
    expect(detail).toBe("1 step does not belong here. 1 move mends it.");
  });

  test("nothing given at all", () => {
    expect(verdict().detail).toBe("4 steps are missing. 4 moves mend it.");
  });
});

test("a move in words", () => {
  expect(moveWords({ step: "motor", after: "board" }, title)).toBe(
    "“Take the motor out” goes directly after “Lift the board”",
  );
  expect(moveWords({ step: "motor", after: null }, title)).toBe("“Take the motor out” goes first");
});
