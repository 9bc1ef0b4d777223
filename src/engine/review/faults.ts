/** What went wrong, and has not been put right since. */

/** One go at something: a sitting of a quiz, a practised order, a run on paper. By the ids of its questions or steps. */
export interface Go {
  readonly asked: readonly string[];
  readonly missed: readonly string[];
  /** Of those missed: where it would have hurt someone or ruined a part. */
  readonly critical: readonly string[];
}

export interface Fault {
  readonly id: string;
  readonly critical: boolean;
  /** How often it was missed. */
  readonly missed: number;
  /** How often running it was right since, but not often enough yet. */
  readonly rightSince: number;
}

/** How often running what was missed must be right until it leaves the list: twice where a fault hurts or ruins. */
export const rightNeeded = (critical: boolean): number => (critical ? 2 : 1);

/**
 * Our own rule. What is missed comes onto the list, and leaves it once it has been right after that: once, or twice running
 * where a miss was critical. Once it has left, what was before is forgotten. In the order in which they were first asked.
 * `goes` are in the order in which they were made. O(answers).
 */
export function faultsIn(goes: readonly Go[]): Fault[] {
  const state = new Map<string, Fault>();
  for (const { asked, missed, critical } of goes) {
    const [wrong, grave] = [new Set(missed), new Set(critical)];
    for (const id of asked) {
      const was = state.get(id) ?? { id, critical: false, missed: 0, rightSince: 0 };
      state.set(id, wrong.has(id) ? again(was, grave.has(id)) : { ...was, rightSince: was.rightSince + 1 });
    }
  }
  return [...state.values()].filter(isOpen);
}

function again(was: Fault, critical: boolean): Fault {
  const before = isOpen(was) ? was : { ...was, critical: false, missed: 0 };
  return { id: was.id, critical: before.critical || critical, missed: before.missed + 1, rightSince: 0 };
}

const isOpen = ({ missed, rightSince, critical }: Fault): boolean =>
  missed > 0 && rightSince < rightNeeded(critical);

/** Critical ones first, then those missed most often; otherwise they stay in their order. */
export const byGravity = (
  a: Pick<Fault, "critical" | "missed">,
  b: Pick<Fault, "critical" | "missed">,
): number => Number(b.critical) - Number(a.critical) || b.missed - a.missed;
