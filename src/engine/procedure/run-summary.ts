/** What a run came to. Follows from its tries alone. */
import { doneIn, type Try } from "./perform.ts";
import type { Pair } from "./precedence.ts";

/** A step that was tried too early, however often. */
export interface TooEarly {
  readonly step: string;
  readonly times: number;
  /** What was missing at the first of these tries, when most of it was. */
  readonly pairs: readonly Pair[];
}

export interface RunSummary {
  /** In the order in which they were done. */
  readonly done: readonly string[];
  readonly isOver: boolean;
  /** How many tries were refused, and how often a critical pair stopped the run. */
  readonly refusals: number;
  readonly stops: number;
  /** The steps refused, in the order of their first refusal; `pairs` are the broken ones. */
  readonly refused: readonly TooEarly[];
  /** The steps at which the run was stopped, in that order; `pairs` are the critical ones. */
  readonly stopped: readonly TooEarly[];
  /** Steps worth reading again, in step order: those tried too early, and the first steps of the critical pairs that a stop would have broken and that end at the step tried. */
  readonly again: readonly string[];
}

/** Sums a run up; `steps` are all the steps of the procedure in step order. O(tries · pairs). */
export function summaryOf(steps: readonly string[], tries: readonly Try[]): RunSummary {
  const done = doneIn(tries);
  const refused = tooEarly(tries, "refused");
  const stopped = tooEarly(tries, "stopped");
  const again = new Set([
    ...[...refused, ...stopped].map(({ step }) => step),
    ...stopped.flatMap(({ step, pairs }) =>
      pairs.filter(({ then }) => then === step).map(({ first }) => first),
    ),
  ]);
  return {
    done,
    isOver: done.length === steps.length,
    refusals: sum(refused),
    stops: sum(stopped),
    refused,
    stopped,
    again: steps.filter((step) => again.has(step)),
  };
}

function tooEarly(tries: readonly Try[], kind: "refused" | "stopped"): TooEarly[] {
  const found = new Map<string, TooEarly>();
  for (const { step, verdict } of tries) {
    if (verdict.kind !== kind) continue;
    const before = found.get(step);
    const pairs = before?.pairs ?? (kind === "stopped" ? verdict.critical : verdict.broken);
    found.set(step, { step, times: (before?.times ?? 0) + 1, pairs });
  }
  return [...found.values()];
}

const sum = (list: readonly TooEarly[]): number => list.reduce((total, { times }) => total + times, 0);
