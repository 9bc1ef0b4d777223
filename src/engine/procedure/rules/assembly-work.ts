/** Rule (e): one step works on an assembly, the other removes or refits anything that then lies in it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { moves, type Touch } from "../touch.ts";
import { isInside } from "./assembly.ts";
import { isOrAre } from "./number.ts";
import type { Rule } from "./rule.ts";

export const assemblyWork: Rule = {
  name: "assembly work",
  binds: "a step that works on an assembly, and one that removes or refits anything in it",
  reason(a, b, relations) {
    if (a.kind === "work" && moves(b) && isInside(b, a, relations)) return workFirst(a, b, relations);
    if (b.kind === "work" && moves(a) && isInside(a, b, relations)) return moveFirst(a, b, relations);
    return undefined;
  },
};

function workFirst(whole: Touch, content: Touch, relations: Relations): string {
  const [comes, goes] = relations.isPlural(content.target)
    ? [t`come out`, t`go back in`]
    : [t`comes out`, t`goes back in`];
  const moved = content.kind === "remove" ? comes : goes;
  return t`${relations.the(whole.target)} ${isOrAre(whole.target, relations)} worked on before ${relations.the(content.target)} ${moved}`;
}

const moveFirst = (content: Touch, whole: Touch, relations: Relations): string =>
  t`${relations.the(whole.target)} ${isOrAre(whole.target, relations)} worked on with ${relations.the(content.target)} ${content.kind === "remove" ? t`out` : t`back in`}`;
