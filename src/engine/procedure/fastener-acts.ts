/** What each act does to the counts of a fastener set. */
import type { ActKind } from "./procedure.ts";
import type { Counts } from "./tray.ts";

export type FastenerAct = Exclude<ActKind, "work">;

interface Row {
  /** How many the act can apply to. */
  there(counts: Counts): number;
  /** The counts when `n` of those are done. */
  done(counts: Counts, n: number): Counts;
}

export const fastenerActs: Readonly<Record<FastenerAct, Row>> = {
  slacken: { there: (c) => c.tight, done: (c, n) => ({ ...c, tight: c.tight - n, slack: c.slack + n }) },
  remove: { there: (c) => c.tight + c.slack, done: takeOut },
  refit: { there: (c) => c.out, done: (c, n) => ({ ...c, slack: c.slack + n, out: c.out - n }) },
  tighten: { there: (c) => c.slack, done: (c, n) => ({ ...c, tight: c.tight + n, slack: c.slack - n }) },
};

/** Tight ones are taken before slack ones. */
function takeOut(counts: Counts, n: number): Counts {
  const tight = Math.min(n, counts.tight);
  return { tight: counts.tight - tight, slack: counts.slack - (n - tight), out: counts.out + n };
}
