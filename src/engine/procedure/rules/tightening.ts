/** Rule (f): one step tightens a set, the other works on a part that it holds. */
import { t } from "../../words.ts";
import { isOrAre } from "./number.ts";
import type { Rule } from "./rule.ts";

export const tightening: Rule = {
  name: "tightening",
  binds: "a step that tightens a fastener set, and one that works on a part it holds",
  reason(a, b, relations) {
    const { the, holds } = relations;
    if (a.kind === "tighten" && b.kind === "work" && holds(a.target, b.target)) {
      return t`${the(a.target)} must hold ${the(b.target)} tight during the work`;
    }
    if (a.kind === "work" && b.kind === "tighten" && holds(b.target, a.target)) {
      return t`${the(a.target)} ${isOrAre(a.target, relations)} seen to before being held tight by ${the(b.target)}`;
    }
    return undefined;
  },
};
