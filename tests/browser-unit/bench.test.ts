import { describe, expect, test } from "vitest";
import { turnOf } from "../../src/browser/bench/keys.ts";
import { keepPlace, readPlace } from "../../src/browser/bench/place.ts";

const press = (key: string, more = {}) => ({
  key,
  shiftKey: false,
  altKey: false,
  ctrlKey: false,
  metaKey: false,
  ...more,
});
const middle = { atTop: false, atEnd: false };
const top = { atTop: true, atEnd: false };
const end = { atTop: false, atEnd: true };

describe("keys turn the page", () => {
  test.each([
    ["ArrowRight", middle, 1],
    ["ArrowLeft", middle, -1],
    ["PageDown", end, 1],
    ["PageDown", middle, 0],
    ["PageUp", top, -1],
    ["PageUp", middle, 0],
    [" ", end, 1],
    [" ", top, 0],
    ["ArrowDown", end, 0],
    ["Enter", end, 1],
    ["Enter", middle, 0],
  ])("%s, %j", (key, scrolled, turn) => {
    expect(turnOf(press(key), scrolled)).toBe(turn);
  });

  test("shift and space go back", () => {
    expect(turnOf(press(" ", { shiftKey: true }), top)).toBe(-1);
    expect(turnOf(press(" ", { shiftKey: true }), end)).toBe(0);
  });

  test.each(["altKey", "ctrlKey", "metaKey"])("with %s they belong to the browser", (modifier) => {
    expect(turnOf(press("ArrowLeft", { [modifier]: true }), middle)).toBe(0);
  });
});

describe("the place at the bench", () => {
  test("is read as it was kept", () => {
    const place = { card: "let-down", done: new Set(["a", "constructor"]) };
    expect(readPlace(JSON.parse(JSON.stringify(keepPlace(place))), "s_before")).toEqual(place);
  });

  test.each([[undefined], [null], ["x"], [{ card: 4, done: "a" }], [{ done: [1, null] }]])(
    "%j begins at the front",
    (kept) => {
      expect(readPlace(kept, "s_before")).toEqual({ card: "s_before", done: new Set() });
    },
  );
});
