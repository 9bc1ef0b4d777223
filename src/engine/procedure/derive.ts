/** Precedence from what the steps do: which pairs of steps are bound, and why. */
import type { Pair, Precedence } from "./precedence.ts";
import type { Procedure, Step } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { rules } from "./rules/index.ts";
import { type Touch, touchesOf } from "./touch.ts";

/**
 * The precedence graph of a procedure, neither closed nor reduced: every pair that a rule binds, in the written order,
 * less those that `maySwap` lifts, and the pairs of `after` that name an earlier step. A pair is critical where its first
 * step is, or where `after` marks it. O(n² · touches² · rules) time for n steps.
 */
export function derivePrecedence(procedure: Procedure): Precedence {
  return {
    steps: procedure.steps.map((step) => step.id),
    pairs: boundPairs(procedure).filter((pair) => !pair.lifted),
  };
}

export interface BoundPair extends Pair {
  /** True where `maySwap` of either step names the other and no `after` demands the pair. */
  readonly lifted: boolean;
}

/** Kept for as long as the procedure is: rules, quizzes and pages of a module all ask. */
const known = new WeakMap<Procedure, readonly BoundPair[]>();

/** All bound pairs, with those that `maySwap` lifts marked. The same procedure is worked out once. */
export function boundPairs(procedure: Procedure): readonly BoundPair[] {
  const pairs = known.get(procedure) ?? findBoundPairs(procedure);
  known.set(procedure, pairs);
  return pairs;
}

function findBoundPairs(procedure: Procedure): BoundPair[] {
  const relations = relationsOf(procedure);
  const touches = touchesOf(procedure, relations);
  const pairs: BoundPair[] = [];
  for (const [later, then] of procedure.steps.entries()) {
    for (let earlier = 0; earlier < later; earlier++) {
      const first = procedure.steps[earlier]!;
      const pair = bind(first, then, reasons(touches[earlier]!, touches[later]!, relations));
      if (pair !== undefined) pairs.push(pair);
    }
  }
  return pairs;
}

function bind(first: Step, then: Step, derived: readonly string[]): BoundPair | undefined {
  const after = then.after.get(first.id);
  const because = after === undefined ? derived : [after.because, ...derived];
  if (because.length === 0) return undefined;
  return {
    first: first.id,
    then: then.id,
    because,
    critical: first.critical || (after?.critical ?? false),
    lifted: after === undefined && (then.maySwap.has(first.id) || first.maySwap.has(then.id)),
  };
}

function reasons(first: readonly Touch[], then: readonly Touch[], relations: Relations): string[] {
  const found = new Set<string>();
  for (const rule of rules) {
    for (const a of first) {
      for (const b of then) {
        const reason = rule.reason(a, b, relations);
        if (reason !== undefined) found.add(reason);
      }
    }
  }
  return [...found];
}
