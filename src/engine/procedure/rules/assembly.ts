/** Rule (d): one step removes or refits an assembly, the other acts on anything that then lies in it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { moves, type Touch } from "../touch.ts";
import { isOrAre } from "./number.ts";
import type { Rule } from "./rule.ts";

export const assembly: Rule = {
  name: "assembly",
  binds: "a step that removes or refits an assembly, and one that acts on anything in it",
  reason(a, b, relations) {
    if (moves(a) && isInside(b, a, relations)) return assemblyFirst(a, b, relations);
    if (moves(b) && isInside(a, b, relations)) return contentFirst(a, b, relations);
    return undefined;
  },
};

/** Whether the one lies in the other. A fastener that holds the assembly itself is not in it: other rules speak of those. */
export const isInside = (content: Touch, whole: Touch, relations: Relations): boolean =>
  content.lies.has(whole.target) && !relations.holds(content.target, whole.target);

function assemblyFirst(whole: Touch, content: Touch, { the, isPlural }: Relations): string {
  const lie = isPlural(content.target) ? t`lie` : t`lies`;
  return whole.kind === "remove"
    ? t`${the(content.target)} ${lie} in ${the(whole.target)}, which must come out first`
    : t`${the(content.target)} ${lie} in ${the(whole.target)}, which must go back first`;
}

function contentFirst(content: Touch, whole: Touch, relations: Relations): string {
  const { the, isPlural } = relations;
  const are = isOrAre(content.target, relations);
  return whole.kind === "refit"
    ? t`${the(content.target)} ${are} seen to before ${the(whole.target)}, in which ${isPlural(content.target) ? t`they lie` : t`it lies`}, can go back`
    : t`${the(content.target)} ${are} seen to with ${the(whole.target)} still in place`;
}
