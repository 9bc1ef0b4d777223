/** Rule (g): one step changes a state, the other changes or requires it. What makes it what it must be then anyway changes nothing. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";
import type { Touch } from "../touch.ts";
import type { Rule } from "./rule.ts";

export const state: Rule = {
  name: "state",
  binds: "a step that changes a state, and one that changes or requires it",
  reason(a, b, relations) {
    if (a.target !== b.target || (b.kind === "makes" && a.value === b.value)) return undefined;
    if (a.kind === "makes" && b.kind === "makes") {
      return t`the ${name(a, relations)} must first be ${a.value}, then ${b.value}`;
    }
    if (a.kind === "makes" && b.kind === "needs")
      return t`the ${name(a, relations)} must be ${b.value}${whatFor(b, relations)}`;
    if (a.kind === "needs" && b.kind === "makes") {
      return t`the ${name(a, relations)} must still be ${a.value}${whatFor(a, relations)}`;
    }
    return undefined;
  },
};

const name = (touch: Touch, { machine }: Relations): string =>
  machine.states.get(touch.target)?.name ?? touch.target;

const whatFor = (touch: Touch, { the }: Relations): string =>
  touch.part === "" ? "" : t` before ${the(touch.part)} can come off or go on`;
