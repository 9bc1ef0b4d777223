/** Rule (b): one step removes or refits a part, the other acts on a fastener holding it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { acts, moves, type Touch } from "../touch.ts";
import { holdsOrHold, isOrAre, itOrThem } from "./number.ts";
import type { Rule } from "./rule.ts";

export const fastening: Rule = {
  name: "fastening",
  binds: "a step that removes or refits a part, and one that acts on a fastener holding it",
  reason(a, b, relations) {
    if (moves(b) && acts(a) && relations.holds(a.target, b.target)) return fastenerFirst(a, b, relations);
    if (moves(a) && acts(b) && relations.holds(b.target, a.target)) return partFirst(a, b, relations);
    return undefined;
  },
};

function fastenerFirst(a: Touch, b: Touch, relations: Relations): string {
  const [set, part] = [relations.the(a.target), relations.the(b.target)];
  const hold = holdsOrHold(a.target, relations);
  return b.kind === "remove"
    ? t`${set} still ${hold} ${part}`
    : t`${set} ${hold} ${part}, and ${isOrAre(a.target, relations)} seen to before the refitting`;
}

function partFirst(a: Touch, b: Touch, relations: Relations): string {
  const [part, set] = [relations.the(a.target), relations.the(b.target)];
  const hold = holdsOrHold(b.target, relations);
  return a.kind === "refit"
    ? t`${part} must be in place before ${set}, which ${hold} ${itOrThem(a.target, relations)}`
    : t`${set} ${hold} ${part}, which must come off first`;
}
