/** The slow, plain way to the best split: every set of safe places is tried. */
import type { TimedStep } from "../../../../src/engine/procedure/sessions/timed-step.ts";

export interface TriedSession {
  readonly steps: readonly string[];
  readonly minutes: number;
  readonly gapAtLeast: number | undefined;
}

/** Every split that the rules allow; minutes are whole. */
export function everySplit(steps: readonly TimedStep[], length: number): TriedSession[][] {
  const safe = steps.slice(0, -1).flatMap(({ stop }, place) => (stop ? [place] : []));
  return subsets(safe)
    .map((ends) => [...ends, steps.length - 1].map((end, index) => session(steps, ends[index - 1], end)))
    .filter((sessions) => sessions.every(({ minutes }) => minutes <= length));
}

function session(steps: readonly TimedStep[], before: number | undefined, end: number): TriedSession {
  const done = steps.slice(before === undefined ? 0 : before + 1, end + 1);
  const inside = done.map(({ time, wait }, index) => time + (index < done.length - 1 ? wait : 0));
  const { wait } = steps[end]!;
  return {
    steps: done.map(({ id }) => id),
    minutes: inside.reduce((sum, minutes) => sum + minutes, 0),
    gapAtLeast: end === steps.length - 1 || wait === 0 ? undefined : wait,
  };
}

function subsets(items: readonly number[]): number[][] {
  return Array.from({ length: 2 ** items.length }, (_, mask) =>
    items.filter((_, index) => Math.floor(mask / 2 ** index) % 2 === 1),
  );
}

/** Fewest, then the least sum of squares left over, then longer first; 0 where two splits are equally good. */
export function compareSplits(
  a: readonly TriedSession[],
  b: readonly TriedSession[],
  length: number,
): number {
  const squares = (split: readonly TriedSession[]): number =>
    split.reduce((sum, { minutes }) => sum + (length - minutes) ** 2, 0);
  const longer = a.map(({ minutes }, index) => (b[index]?.minutes ?? 0) - minutes).find((more) => more !== 0);
  return a.length - b.length || squares(a) - squares(b) || (longer ?? 0);
}
