/** Rule (b): one step removes or refits a part, the other acts on a fastener holding it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { acts, moves, type Touch } from "../touch.ts";
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
  const set = relations.the(a.target);
  const hold = relations.isPlural(a.target) ? t`hold` : t`holds`;
  return b.kind === "remove"
    ? t`${set} still ${hold} ${relations.the(b.target)}`
    : t`${set}, which ${hold} ${relations.the(b.target)}, ${relations.isPlural(a.target) ? t`are` : t`is`} seen to before that goes back on`;
}

function partFirst(a: Touch, b: Touch, relations: Relations): string {
  const set = relations.the(b.target);
  const hold = relations.isPlural(b.target) ? t`hold` : t`holds`;
  return a.kind === "refit"
    ? t`${relations.the(a.target)} must be in place before ${set}, which ${hold} it`
    : t`${set} ${hold} ${relations.the(a.target)}, which comes off first`;
}
