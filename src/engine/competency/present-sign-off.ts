import { levels } from "./levels.ts";
import type { JudgedSignOff } from "./support.ts";

/** Of the sign-offs that count the one of the highest level; of those the one that holds longest, then the last. */
export function presentSignOff(signOffs: readonly JudgedSignOff[]): JudgedSignOff | undefined {
  return signOffs.filter(({ problems }) => problems.length === 0).toSorted(bestFirst)[0];
}

function bestFirst({ signed: a }: JudgedSignOff, { signed: b }: JudgedSignOff): number {
  return (
    levels.indexOf(b.statement.level) - levels.indexOf(a.statement.level) ||
    longer(a.until, b.until) ||
    b.from - a.from ||
    (a.digest < b.digest ? -1 : 1)
  );
}

/** Negative where `a` holds longer. Without an end it holds for ever. */
function longer(a: number | undefined, b: number | undefined): number {
  const [left, right] = [a ?? Number.MAX_VALUE, b ?? Number.MAX_VALUE];
  return right - left;
}
