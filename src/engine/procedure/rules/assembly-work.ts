/** Rule (e): one step works on an assembly, the other removes or refits anything that then lies in it. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import { moves, type Touch } from "../touch.ts";
import { isInside } from "./assembly.ts";
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

const workFirst = (whole: Touch, content: Touch, { the, isPlural }: Relations): string => {
  const [come, go] = isPlural(content.target) ? [t`come`, t`go`] : [t`comes`, t`goes`];
  const moved = content.kind === "remove" ? t`${come} out of it` : t`${go} back into it`;
  return t`${the(whole.target)} is worked on before ${the(content.target)} ${moved}`;
};

const moveFirst = (content: Touch, whole: Touch, { the }: Relations): string =>
  t`${the(whole.target)} is worked on with ${the(content.target)} ${content.kind === "remove" ? t`out of it` : t`back in it`}`;
