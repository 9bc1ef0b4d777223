/** Rule (f): one step tightens a set, the other works on a part that it holds. */
import { t } from "../../words.ts";
import type { Rule } from "./rule.ts";

export const tightening: Rule = {
  name: "tightening",
  binds: "a step that tightens a fastener set, and one that works on a part it holds",
  reason(a, b, { the, holds, isPlural }) {
    if (a.kind === "tighten" && b.kind === "work" && holds(a.target, b.target)) {
      return t`${the(a.target)} must hold ${the(b.target)} tight while it is worked on`;
    }
    if (a.kind === "work" && b.kind === "tighten" && holds(b.target, a.target)) {
      return t`${the(a.target)} is seen to before ${the(b.target)} ${isPlural(b.target) ? t`are` : t`is`} tightened on it`;
    }
    return undefined;
  },
};
