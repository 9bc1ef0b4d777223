/** Rule (a): both steps touch the same part or fastener set, or a part and its replacement. */
import { t } from "../../words.ts";
import { acts } from "../touch.ts";
import { isOrAre } from "./number.ts";
import type { Rule } from "./rule.ts";

/** Keyed by "earlier act, later act"; `it` is the thing, `are` agrees with it. */
const words = new Map<string, (it: string, are: string) => string>([
  ["slacken remove", (it, are) => t`${it} ${are} slackened before coming out`],
  ["slacken tighten", (it, are) => t`${it} ${are} slackened first and tightened again afterwards`],
  ["remove work", (it, are) => t`${it} ${are} worked on after coming off`],
  ["remove refit", (it) => t`${it} must be off before going back on`],
  ["work remove", (it, are) => t`${it} ${are} seen to before coming off`],
  ["work refit", (it, are) => t`${it} ${are} seen to before going back on`],
  ["work work", (it, are) => t`${it} ${are} worked on in both steps, and in this order`],
  ["refit work", (it, are) => t`${it} ${are} worked on after going back on`],
  ["refit tighten", (it) => t`${it} must be in before being tightened`],
  ["work tighten", (it, are) => t`${it} ${are} seen to before being tightened`],
  ["tighten work", (it, are) => t`${it} ${are} tightened before being worked on`],
]);

export const sameThing: Rule = {
  name: "same thing",
  binds: "steps that touch the same part or fastener set, or a part and its replacement",
  reason(a, b, relations) {
    if (!acts(a) || !acts(b)) return undefined;
    const it = relations.the(b.target);
    if (a.target === b.target) {
      const say = words.get(`${a.kind} ${b.kind}`);
      return say?.(it, isOrAre(b.target, relations)) ?? t`both steps handle ${it}`;
    }
    if (!relations.isReplacement(a.target, b.target)) return undefined;
    return t`${relations.the(a.target)} and ${it} share one place, one taking over from the other`;
  },
};
