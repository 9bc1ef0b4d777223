import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSessions } from "../../../../src/engine/procedure/sessions/plan-sessions.ts";
import type { TimedStep } from "../../../../src/engine/procedure/sessions/timed-step.ts";
import { compareSplits, everySplit } from "./every-split.ts";

/** `"40"`, `"40 | "` where one may stop after it, `"40 +30"` where one has to wait 30 minutes. */
function written(...steps: string[]): TimedStep[] {
  return steps.map((text, index) => {
    const [, time, wait, stop] = /^(\d+)(?: \+(\d+))?( \|)?$/.exec(text)!;
    return {
      id: "abcdefghij"[index]!,
      time: Number(time),
      wait: Number(wait ?? 0),
      stop: stop !== undefined,
    };
  });
}

/** Sessions as "abc 40": steps, minutes and the gap after it where there is one. */
function told(steps: readonly TimedStep[], length: number): string[] | undefined {
  return planSessions(steps, length).sessions?.map(
    ({ steps: ids, minutes, gapAtLeast }) =>
      `${ids.join("")} ${minutes}${gapAtLeast === undefined ? "" : ` +${gapAtLeast}`}`,
  );
}

describe("worked by hand", () => {
  test("one session where all fits, whatever may be stopped at", () => {
    expect(told(written("20 |", "30 |", "10"), 60)).toEqual(["abc 60"]);
  });

  test("sessions end only where one may stop, and at the end", () => {
    expect(told(written("20", "30 |", "10", "30"), 60)).toEqual(["ab 50", "cd 40"]);
  });

  test("fewest first: two uneven sessions rather than three even ones", () => {
    expect(told(written("30 |", "30 |", "30"), 60)).toEqual(["ab 60", "c 30"]);
  });

  test("then the evenest: 40 + 30 leaves 20² + 30², 50 + 20 leaves 10² + 40²", () => {
    expect(told(written("40 |", "10 |", "20"), 60)).toEqual(["a 40", "bc 30"]);
  });

  test("then the longer first: 50, 30 rather than 30, 50", () => {
    expect(told(written("30 |", "20 |", "30"), 60)).toEqual(["ab 50", "c 30"]);
  });

  test("a wait inside a session costs its time, one between two sessions none", () => {
    expect(told(written("20 +10 |", "30"), 60)).toEqual(["ab 60"]);
    expect(told(written("20 +11 |", "30"), 60)).toEqual(["a 20 +11", "b 30"]);
    expect(told(written("20 +720 |", "30"), 60)).toEqual(["a 20 +720", "b 30"]);
  });

  test("a wait after the last step is between no two sessions", () => {
    expect(told(written("20 +720"), 60)).toEqual(["a 20"]);
  });

  test("steps without a time go with the session before them", () => {
    expect(told(written("60 |", "0 |", "0 |", "30"), 60)).toEqual(["abc 60", "d 30"]);
  });

  test("no steps, no sessions", () => {
    expect(planSessions([], 60)).toEqual({ sessions: [], tooLong: null });
  });

  test("the first stretch without a safe place that is longer than a session is named, waits inside counted", () => {
    const steps = written("20 |", "30", "20 +15", "10 +5 |", "70 |", "5");
    expect(planSessions(steps, 74)).toEqual({ sessions: null, tooLong: { from: "b", to: "d", minutes: 75 } });
    expect(planSessions(steps, 75).tooLong).toBeNull();
  });

  test("tenths of a minute add up exactly", () => {
    const tenths = Array.from({ length: 10 }, (_, index) => ({
      id: `${index}`,
      time: 0.1,
      wait: 0,
      stop: true,
    }));
    expect(planSessions(tenths, 1).sessions).toEqual([
      { steps: tenths.map(({ id }) => id), minutes: 1, gapAtLeast: undefined },
    ]);
  });
});

describe("compared with every split", () => {
  const step = fc.record({
    time: fc.nat({ max: 6 }),
    wait: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.nat({ max: 9 }) }),
    stop: fc.boolean(),
  });
  const steps = fc
    .array(step, { minLength: 1, maxLength: 11 })
    .map((list) => list.map((one, index): TimedStep => ({ id: `s${index}`, ...one })));

  test("none is better by the stated measures, and it is one of them: gaps, minutes and steps", () => {
    let split = 0;
    let tooLong = 0;
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 18 }), (list, length) => {
        const all = everySplit(list, length);
        const { sessions } = planSessions(list, length);
        expect(sessions === null).toBe(all.length === 0);
        if (sessions === null) {
          tooLong++;
          return;
        }
        if (sessions.length > 1) split++;
        expect(all).toContainEqual(sessions);
        for (const other of all) expect(compareSplits(sessions, other, length)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 3000, seed: 20261125 },
    );
    expect(split).toBeGreaterThan(500);
    expect(tooLong).toBeGreaterThan(200);
  });

  test("what is too long is a stretch that no session can hold and no safe place divides", () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 12 }), (list, length) => {
        const { tooLong } = planSessions(list, length);
        if (tooLong === null) return;
        const [from, to] = [tooLong.from, tooLong.to].map((id) => list.findIndex((one) => one.id === id));
        const stretch = list.slice(from, to! + 1);
        expect(stretch.slice(0, -1).some(({ stop }) => stop)).toBe(false);
        expect(tooLong.minutes).toBeGreaterThan(length);
        expect(everySplit(stretch, tooLong.minutes - 1)).toEqual([]);
        expect(everySplit(stretch, tooLong.minutes)).toHaveLength(1);
      }),
      { numRuns: 1000, seed: 20261125 },
    );
  });

  test("where many steps take no time, and ties abound", () => {
    const ties = fc.array(
      fc.record({ time: fc.constantFrom(0, 2, 4), wait: fc.constantFrom(0, 0, 2), stop: fc.constant(true) }),
      {
        minLength: 6,
        maxLength: 11,
      },
    );
    fc.assert(
      fc.property(ties, fc.constantFrom(4, 6, 8), (list, length) => {
        const named = list.map((one, index): TimedStep => ({ id: `s${index}`, ...one }));
        const { sessions } = planSessions(named, length);
        for (const other of everySplit(named, length))
          expect(compareSplits(sessions!, other, length)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 200, seed: 20261125 },
    );
  });
});
