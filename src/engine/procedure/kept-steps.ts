import { addRow, type BitRows, bitRows, clearBit, hasBit, setBit, setOf, takeMembers } from "./bits.ts";
import { maximumMatching, unmatched } from "./matching.ts";
import type { Poset } from "./poset.ts";

/**
 * The most steps of an answer that can stay where they are while the others are moved to make it right.
 *
 * Two steps are in conflict when the answer has them the wrong way round. That relation is itself a strict partial
 * order, so a largest set without conflict is a largest antichain, found by matching each step (left copy) with one
 * given later that must precede it (right copy). Of the largest antichains it is the one of D. König's theorem: left
 * copy reached by alternating paths from the unmatched left copies, right copy not. What is so reached is the same for
 * every largest matching (A. L. Dulmage, N. S. Mendelsohn, Canadian J. Math. 10 (1958)), so the answer is one and the
 * same whoever computes it. O(√n · n²/32).
 */
export function keptSteps(poset: Poset, given: readonly number[]): number[] {
  const conflicts = conflictsOf(poset, given);
  const matching = maximumMatching(conflicts);
  const unseen = setOf(poset.size, given);
  const reached = setOf(poset.size, []);
  for (let lefts = unmatched(matching.left); lefts.length > 0; ) {
    for (const left of lefts) setBit(reached, 0, left);
    const rights: number[] = [];
    for (const left of lefts) takeMembers(conflicts, left, unseen, rights);
    lefts = rights.map((right) => matching.right[right]!);
  }
  return given.filter((step) => hasBit(reached, 0, step) && hasBit(unseen, 0, step));
}

/** Row x holds what must come before x and is given after it. */
function conflictsOf(poset: Poset, given: readonly number[]): BitRows {
  const conflicts = bitRows(poset.size, poset.size);
  const later = setOf(poset.size, given);
  for (const step of given) {
    clearBit(later, 0, step);
    addCommon(conflicts, step, poset.before, later);
  }
  return conflicts;
}

function addCommon(into: BitRows, row: number, from: BitRows, among: BitRows): void {
  addRow(into, row, from, row);
  for (let word = 0; word < into.words; word++) into.bits[row * into.words + word]! &= among.bits[word]!;
}
