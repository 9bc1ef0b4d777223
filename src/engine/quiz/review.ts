/** What to go over on the next workshop evening. */
import type { PastSitting } from "./paper.ts";
import type { Quiz } from "./quiz.ts";

export interface ToGoOver {
  readonly id: string;
  /** How often it was missed. */
  readonly missed: number;
  /** It was right since, but not often enough yet. */
  readonly rightSince: number;
}

/** How often running a missed question must be right until it leaves the list: twice where a fault hurts or ruins. */
const rightNeeded = (critical: boolean): number => (critical ? 2 : 1);

/**
 * Our own rule. A question comes onto the list when it is missed, and leaves it once it has been right after that: a
 * critical one twice running, any other once. Critical ones stand first, then those missed most often, then the written
 * order. `sittings` are in the order in which they were sat. O(answers).
 */
export function toGoOver({ questions }: Quiz, sittings: readonly PastSitting[]): ToGoOver[] {
  const state = new Map<string, { missed: number; rightSince: number }>();
  for (const { asked, missed } of sittings) {
    const wrong = new Set(missed);
    for (const id of asked) {
      const was = state.get(id) ?? { missed: 0, rightSince: 0 };
      const isWrong = wrong.has(id);
      state.set(id, { missed: was.missed + Number(isWrong), rightSince: isWrong ? 0 : was.rightSince + 1 });
    }
  }
  const open = questions.flatMap(({ id, critical }) => {
    const { missed, rightSince } = state.get(id) ?? { missed: 0, rightSince: 0 };
    return missed > 0 && rightSince < rightNeeded(critical) ? [{ id, critical, missed, rightSince }] : [];
  });
  return open
    .sort((a, b) => Number(b.critical) - Number(a.critical) || b.missed - a.missed)
    .map(({ id, missed, rightSince }) => ({ id, missed, rightSince }));
}
