/** What to go over on the next workshop evening, of one quiz. */
import { byGravity, faultsIn } from "../review/faults.ts";
import type { PastSitting } from "./paper.ts";
import type { Quiz } from "./quiz.ts";

export interface ToGoOver {
  readonly id: string;
  /** How often it was missed. */
  readonly missed: number;
  /** It was right since, but not often enough yet. */
  readonly rightSince: number;
}

/**
 * By the rule of `faultsIn`, a miss being critical where the question is. Critical ones stand first, then those missed most
 * often, then the written order. `sittings` are in the order in which they were sat. O(answers).
 */
export function toGoOver({ questions }: Quiz, sittings: readonly PastSitting[]): ToGoOver[] {
  const critical = new Set(questions.filter((question) => question.critical).map(({ id }) => id));
  const goes = sittings.map((go) => ({ ...go, critical: go.missed.filter((id) => critical.has(id)) }));
  const faults = new Map(faultsIn(goes).map((fault) => [fault.id, fault]));
  return questions
    .flatMap(({ id }) => faults.get(id) ?? [])
    .sort(byGravity)
    .map(({ id, missed, rightSince }) => ({ id, missed, rightSince }));
}
