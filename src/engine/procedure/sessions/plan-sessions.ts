/** Splits a procedure as written into work sessions that each end at a safe place. */
import { bestSplit, type Way } from "./split.ts";
import { type Stretch, stretchesOf } from "./stretches.ts";
import { inSeconds, type TimedStep } from "./timed-step.ts";

export interface Session {
  /** Ids, in the written order. */
  readonly steps: readonly string[];
  /** Work and the waits inside the session. */
  readonly minutes: number;
  /** Minutes that must pass before the next session; undefined where none, and after the last session. */
  readonly gapAtLeast: number | undefined;
}

/** Steps between two safe places that take longer than a session. */
export interface TooLong {
  readonly from: string;
  readonly to: string;
  readonly minutes: number;
}

export type Sessions =
  | { readonly sessions: readonly Session[]; readonly tooLong: null }
  | { readonly sessions: null; readonly tooLong: TooLong };

/**
 * The sessions of at most `length` minutes in which the steps are done as written, each ending after a step that may be
 * stopped at, the last at the end: the fewest, then the evenest (see `bestSplit`). Where there are none, the first stretch
 * that is longer than a session: a split exists exactly where every stretch between two safe places fits. Times count to
 * the second. No steps need no session. O(steps + stretches²).
 */
export function planSessions(steps: readonly TimedStep[], length: number): Sessions {
  const stretches = stretchesOf(steps);
  const limit = inSeconds(length);
  const long = stretches.find(({ seconds }) => seconds > limit);
  if (long !== undefined) return { sessions: null, tooLong: stretchInWords(long, steps) };
  const sessions: Session[] = [];
  let way: Way | undefined = stretches.length === 0 ? undefined : bestSplit(stretches, limit);
  for (; way !== undefined; way = way.next) sessions.push(sessionOf(way, stretches, steps));
  return { sessions, tooLong: null };
}

function stretchInWords({ first, last, seconds }: Stretch, steps: readonly TimedStep[]): TooLong {
  return { from: steps[first]!.id, to: steps[last]!.id, minutes: seconds / 60 };
}

function sessionOf(way: Way, stretches: readonly Stretch[], steps: readonly TimedStep[]): Session {
  const { wait, last } = stretches[way.to]!;
  return {
    steps: steps.slice(stretches[way.from]!.first, last + 1).map(({ id }) => id),
    minutes: way.seconds / 60,
    gapAtLeast: way.next === undefined || wait === 0 ? undefined : wait / 60,
  };
}
