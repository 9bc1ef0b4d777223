/** Rule (c): one step removes or refits a part, the other acts on anything that it covers there, or works through it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { moves, type Touch } from "../touch.ts";
import { isOrAre, stillOver } from "./number.ts";
import type { Rule } from "./rule.ts";

export const covering: Rule = {
  name: "covering",
  binds: "a step that removes or refits a part, and one that acts on anything it covers, or works through it",
  reason(a, b, relations) {
    if (moves(a) && b.kind === "through" && a.target === b.target) return throughAfter(a, relations);
    if (moves(b) && a.kind === "through" && a.target === b.target) return throughBefore(b, relations);
    if (moves(a) && b.under.has(a.target)) return coverFirst(a, b, relations);
    if (moves(b) && a.under.has(b.target)) return coveredFirst(a, b, relations);
    return undefined;
  },
};

const throughAfter = (cover: Touch, { the }: Relations): string =>
  cover.kind === "refit"
    ? t`the work is done through ${the(cover.target)}, which must be back on`
    : t`the work through ${the(cover.target)} comes after the removal`;

const throughBefore = (cover: Touch, { the }: Relations): string =>
  cover.kind === "remove"
    ? t`the work is done through ${the(cover.target)}, which must still be on`
    : t`the work through ${the(cover.target)} comes before the refitting`;

function coverFirst(cover: Touch, covered: Touch, relations: Relations): string {
  if (cover.kind === "remove") return stillOver(cover.target, covered.target, relations);
  const [it, what] = [relations.the(cover.target), relations.the(covered.target)];
  return relations.isPlural(cover.target)
    ? t`${it} go back on first: they cover ${what}`
    : t`${it} goes back on first: it covers ${what}`;
}

function coveredFirst(covered: Touch, cover: Touch, relations: Relations): string {
  const [it, what] = [relations.the(cover.target), relations.the(covered.target)];
  if (cover.kind !== "refit")
    return t`${what} ${isOrAre(covered.target, relations)} seen to before the removal of ${it}, lying on top`;
  return relations.isPlural(cover.target)
    ? t`once ${it} are back on, they cover ${what}`
    : t`once ${it} is back on, it covers ${what}`;
}
