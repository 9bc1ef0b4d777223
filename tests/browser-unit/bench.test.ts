import { describe, expect, test } from "vitest";
import { beginning, keepPlace, readPlace, withId } from "../../src/browser/bench/place.ts";

describe("the place at the bench", () => {
  test("is read as it was kept", () => {
    const place = {
      card: "let-down",
      done: new Set(["a", "constructor"]),
      checked: new Set(["a"]),
      timers: [{ step: "a", ends: 1_800_000_000_000, isTold: true }],
    };
    expect(readPlace(JSON.parse(JSON.stringify(keepPlace(place))), "s_before")).toEqual(place);
  });

  test.each([
    [undefined],
    [null],
    ["x"],
    [{ card: 4, done: "a", checked: {}, timers: "soon" }],
    [{ done: [1, null], checked: [[]], timers: [null, 3, { step: "a" }, { step: "a", ends: "1" }] }],
    [
      {
        timers: [
          { step: "a", ends: 9e15 },
          { step: 2, ends: 1 },
        ],
      },
    ],
  ])("%j begins at the front", (kept) => {
    expect(readPlace(kept, "s_before")).toEqual(beginning("s_before"));
  });

  test("what an earlier version kept, without checks and timers, is taken up", () => {
    expect(readPlace({ card: "b", done: ["a"] }, "s_before")).toEqual({
      ...beginning("b"),
      done: new Set(["a"]),
    });
  });

  test("a tick is put in and taken out, and the set before stays as it was", () => {
    const before = new Set(["a"]);
    expect([...withId(before, "b", true)]).toEqual(["a", "b"]);
    expect([...withId(before, "a", false)]).toEqual([]);
    expect([...before]).toEqual(["a"]);
  });
});
