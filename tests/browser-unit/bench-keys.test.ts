import { describe, expect, test } from "vitest";
import { deedOf, type Taught } from "../../src/browser/bench/keys/deeds.ts";
import { readTaught, teach, teachable, unteach } from "../../src/browser/bench/keys/taught.ts";

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
    ["ArrowRight", middle, "turn on"],
    ["ArrowLeft", middle, "turn back"],
    ["PageDown", end, "turn on"],
    ["PageDown", middle, "scroll on"],
    ["PageUp", top, "turn back"],
    ["PageUp", middle, "scroll back"],
    [" ", end, "turn on"],
    [" ", top, "scroll on"],
    ["ArrowDown", end, undefined],
    ["Enter", end, "turn on"],
    ["Enter", middle, "scroll on"],
  ])("%s, %j", (key, scrolled, deed) => {
    expect(deedOf(press(key), scrolled)).toBe(deed);
  });

  test("shift and space go back", () => {
    expect(deedOf(press(" ", { shiftKey: true }), top)).toBe("turn back");
    expect(deedOf(press(" ", { shiftKey: true }), end)).toBe("scroll back");
  });

  test.each(["altKey", "ctrlKey", "metaKey"])("with %s they belong to the browser", (modifier) => {
    expect(deedOf(press("ArrowLeft", { [modifier]: true }), middle)).toBeUndefined();
    expect(deedOf(press("b", { [modifier]: true }), end, { on: "b" })).toBeUndefined();
  });

  // WCAG 2.2, 2.1.4 Character Key Shortcuts: off until someone asks for them.
  test.each([..."abcdefghijklmnopqrstuvwxyz0123456789.,-+#"])("%s does nothing of itself", (key) => {
    expect(deedOf(press(key), end)).toBeUndefined();
  });
});

describe("taught keys", () => {
  test.each([
    ["b", { on: "b" }, end, "turn on"],
    ["B", { on: "b" }, middle, "scroll on"],
    ["F13", { tick: "F13" }, middle, "tick"],
    ["ArrowUp", { back: "ArrowUp" }, top, "turn back"],
    ["PageDown", { tick: "PageDown" }, end, "tick"],
    ["x", { on: "b" }, end, undefined],
  ])("%s with %j", (key, taught: Taught, scrolled, deed) => {
    expect(deedOf(press(key), scrolled, taught)).toBe(deed);
  });

  test.each(["Tab", "Escape", "Shift", "Control", "Alt", "Meta", "Dead", "Unidentified", ""])(
    "%s can't be taught",
    (key) => {
      expect(teachable(press(key))).toBeUndefined();
    },
  );

  test("a key pressed with another can't be taught; a letter can, whether capital or not", () => {
    expect(teachable(press("b", { ctrlKey: true }))).toBeUndefined();
    expect(teachable(press("B"))).toBe("b");
  });

  test("a key has one role, and a role one key", () => {
    const first = teach({}, "on", "b");
    expect(teach(first, "on", "n")).toEqual({ on: "n" });
    expect(teach(first, "back", "b")).toEqual({ back: "b" });
    expect(unteach(teach(first, "tick", "t"), "on")).toEqual({ tick: "t" });
  });

  test("what was kept is read again, and nothing else", () => {
    const taught = { on: "b", back: "PageUp", tick: "t" };
    expect(readTaught(JSON.parse(JSON.stringify(taught)))).toEqual(taught);
    for (const kept of [undefined, null, 7, "b", [], { on: 1 }, { on: "Tab" }, { on: "" }, { next: "b" }])
      expect(readTaught(kept)).toEqual({});
    expect(readTaught({ on: "b", back: "b" })).toEqual({ back: "b" });
  });
});
