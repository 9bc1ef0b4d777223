/** Timers for waits. Each is kept as the moment at which it ends, so that sleep, a reload or a closed page change nothing. */
import { fieldsOf } from "../../page/store.ts";

export interface Timer {
  /** The id of the step after which one waits. */
  readonly step: string;
  /** Milliseconds since 1970. */
  readonly ends: number;
  /** Its end has been announced. */
  readonly isTold: boolean;
}

const minute = 60_000;

/** One for each step at most, the one that ends first in front. A step that has one begins it again. `minutes` > 0. */
export function startTimer(
  timers: readonly Timer[],
  step: string,
  minutes: number,
  now: number,
): readonly Timer[] {
  return withTimer(timers, { step, ends: now + minutes * minute, isTold: false });
}

/** With a timer put in, in place of the one that its step has. */
export function withTimer(timers: readonly Timer[], timer: Timer): readonly Timer[] {
  return [...withoutTimer(timers, timer.step), timer].sort((one, other) => one.ends - other.ends);
}

export const withoutTimer = (timers: readonly Timer[], step: string): readonly Timer[] =>
  timers.filter((each) => each.step !== step);

/** Milliseconds to its end; 0 once it is over. */
export const leftOf = ({ ends }: Timer, now: number): number => Math.max(0, ends - now);

/** Those that are over and were not announced. */
export const endedUntold = (timers: readonly Timer[], now: number): readonly Timer[] =>
  timers.filter(({ ends, isTold }) => ends <= now && !isTold);

/** All that are over count as announced. */
export const toldAll = (timers: readonly Timer[], now: number): readonly Timer[] =>
  timers.map((timer) => (timer.ends <= now ? { ...timer, isTold: true } : timer));

/** What was kept, which may be anything. */
export function readTimers(kept: unknown): readonly Timer[] {
  if (!Array.isArray(kept)) return [];
  return kept.flatMap(readTimer).reduce<readonly Timer[]>(withTimer, []);
}

/** A date of JavaScript reaches so far. */
const lastMoment = 8.64e15;

function readTimer(kept: unknown): Timer[] {
  const { step, ends, isTold } = fieldsOf(kept);
  if (typeof step !== "string" || typeof ends !== "number" || !(Math.abs(ends) <= lastMoment)) return [];
  return [{ step, ends, isTold: isTold === true }];
}
