import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  endedUntold,
  leftOf,
  readTimers,
  startTimer,
  toldAll,
  withoutTimer,
  withTimer,
} from "../../src/browser/bench/waits/timers.ts";
import { clockWords, leftWords, overWords, waitWords } from "../../src/browser/bench/waits/wait-words.ts";

const second = 1000;
const minute = 60 * second;
const hour = 60 * minute;
/** A moment on a clock that the test holds. */
const noon = Date.UTC(2027, 2, 4, 12, 0, 0);

describe("timers", () => {
  test("count by the clock alone: however long nobody looked, what is left is right", () => {
    const [timer] = startTimer([], "wash", 30, noon);
    expect(leftOf(timer!, noon)).toBe(30 * minute);
    expect(leftOf(timer!, noon + 29 * minute + 59 * second)).toBe(second);
    expect(leftOf(timer!, noon + 30 * minute)).toBe(0);
    expect(leftOf(timer!, noon + 5 * hour)).toBe(0);
  });

  test("several run at once, the one that ends first in front; a step has one", () => {
    const timers = startTimer(startTimer([], "wash", 120, noon), "pad", 30, noon);
    expect(timers.map(({ step }) => step)).toEqual(["pad", "wash"]);
    const again = startTimer(timers, "pad", 200, noon);
    expect(again.map(({ step }) => step)).toEqual(["wash", "pad"]);
    expect(withoutTimer(again, "wash").map(({ step }) => step)).toEqual(["pad"]);
  });

  test("one that was stopped is put back with the end that it had", () => {
    const timers = startTimer([], "wash", 120, noon);
    expect(withTimer(withoutTimer(timers, "wash"), timers[0]!)).toEqual(timers);
  });

  test("an end is told once", () => {
    const timers = startTimer(startTimer([], "wash", 120, noon), "pad", 30, noon);
    expect(endedUntold(timers, noon + 30 * minute - 1)).toEqual([]);
    const later = noon + 31 * minute;
    expect(endedUntold(timers, later).map(({ step }) => step)).toEqual(["pad"]);
    expect(endedUntold(toldAll(timers, later), later)).toEqual([]);
    expect(endedUntold(toldAll(timers, later), noon + 3 * hour).map(({ step }) => step)).toEqual(["wash"]);
  });

  test("anything may have been kept", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (kept) => {
        const timers = readTimers(kept);
        expect(new Set(timers.map(({ step }) => step)).size).toBe(timers.length);
        expect(readTimers(JSON.parse(JSON.stringify(timers)))).toEqual(timers);
      }),
    );
  });
});

describe("times in words", () => {
  test.each([
    [1, "1 s"],
    [45 * second, "45 s"],
    [minute, "1 min"],
    [4 * minute + 31.2 * second, "4 min 32 s"],
    [59 * minute + 59 * second, "1 h"],
    [hour, "1 h"],
    [hour + second, "1 h 1 min"],
    [11 * hour + 59 * minute, "11 h 59 min"],
    [48 * hour, "2 days"],
    [51 * hour, "2 days 3 h"],
  ])("%d ms: %s", (left, words) => {
    expect(leftWords(left)).toBe(words);
  });

  test("never says that nothing is left while something is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 * 24 * hour }), (left) => {
        expect(leftWords(left)).not.toMatch(/(^| )0 /);
      }),
    );
  });

  test("the clock says the day where it is another", () => {
    expect(clockWords(noon + 90 * minute, noon, "UTC")).toBe("13:30");
    expect(clockWords(noon + 12 * hour, noon, "UTC")).toMatch(/^Fri,? 5 Mar,? (at )?00:00$/);
    // The same moments by the clock of another place: there it is the same day.
    expect(clockWords(noon + 11 * hour, noon, "America/New_York")).toBe("18:00");
  });

  test("a wait is told with its step, what is left and its end", () => {
    const told = { number: 14, dries: false, left: 4 * minute, clock: "15:20" };
    expect(waitWords(told)).toBe("Wait after step 14: 4 min left, until 15:20.");
    expect(waitWords({ ...told, dries: true })).toBe("Drying after step 14: 4 min left, until 15:20.");
    expect(waitWords({ ...told, left: 0 })).toBe("Wait after step 14: over since 15:20.");
    expect(overWords({ ...told, left: 0, dries: true })).toBe("The drying after step 14 is over (15:20).");
  });
});
