/** Rule (c): one step removes or refits a part, the other acts on anything that it covers there, or works through it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { moves, type Touch } from "../touch.ts";
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
    : t`the work through ${the(cover.target)} comes after it was off`;

const throughBefore = (cover: Touch, { the }: Relations): string =>
  cover.kind === "remove"
    ? t`the work is done through ${the(cover.target)}, which must still be on`
    : t`the work through ${the(cover.target)} comes before it is refitted`;

const coverFirst = (cover: Touch, covered: Touch, { the }: Relations): string =>
  cover.kind === "remove"
    ? t`${the(cover.target)} is still on: it covers ${the(covered.target)}`
    : t`${the(cover.target)} goes back on first: it covers ${the(covered.target)}`;

const coveredFirst = (covered: Touch, cover: Touch, { the, isPlural }: Relations): string => {
  const [it, what] = [the(cover.target), the(covered.target)];
  if (cover.kind === "refit") return t`once ${it} is back on, it covers ${what}`;
  return isPlural(covered.target)
    ? t`${what} are seen to before ${it}, which covers them, comes off`
    : t`${what} is seen to before ${it}, which covers it, comes off`;
};
