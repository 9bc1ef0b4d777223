import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { inTime } from "../../src/browser/page/in-time.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const never = new Promise<string>(() => undefined);

test("what answers in time is handed on, and so is its refusal; no clock goes on", async () => {
  expect(await inTime(Promise.resolve("open"), 3)).toBe("open");
  await expect(inTime(Promise.reject(new Error("denied")), 3)).rejects.toThrow("denied");
  expect(vi.getTimerCount()).toBe(0);
});

test("what does not answer is given up after as many seconds", async () => {
  const waiting = inTime(never, 3);
  const fault = vi.fn();
  waiting.catch(fault);
  await vi.advanceTimersByTimeAsync(2999);
  expect(fault).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(1);
  expect(fault).toHaveBeenCalledWith(expect.objectContaining({ name: "TimeoutError" }));
});

// HTML, "timer initialization steps": a timer is due by the clock; one that is overdue after sleep fires once.
test("sleep counts for one second, however long it was", async () => {
  const timers = clockThatSleeps();
  const fault = vi.fn();
  inTime(never, 3).catch(fault);
  timers.sleep(3_600_000);
  await undefined;
  expect(fault).not.toHaveBeenCalled();
  timers.sleep(1000);
  timers.sleep(1000);
  await undefined;
  await undefined;
  expect(fault).toHaveBeenCalledOnce();
});

/** In place of the browser's timers: after sleep each that is overdue fires once. */
function clockThatSleeps() {
  let now = 0;
  const all: { due: number; readonly every: number | undefined; readonly run: () => void }[] = [];
  vi.stubGlobal("setTimeout", (run: () => void, ms: number) =>
    all.push({ due: now + ms, every: undefined, run }),
  );
  vi.stubGlobal("setInterval", (run: () => void, ms: number) => all.push({ due: now + ms, every: ms, run }));
  vi.stubGlobal("clearInterval", (number: number) => all.splice(number - 1, 1));
  return {
    sleep(ms: number) {
      now += ms;
      for (const timer of all.filter(({ due }) => due <= now)) {
        timer.due = timer.every === undefined ? Number.POSITIVE_INFINITY : now + timer.every;
        timer.run();
      }
    },
  };
}
