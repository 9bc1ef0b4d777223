/** Why a step can't be done yet: what stands in its way now, and on demand which steps come first. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

export interface Refusal {
  /** Of the machine as it is; may be none. */
  readonly hindrances: readonly string[];
  /** Steps that come first, with the reasons. */
  readonly pairs: readonly string[];
}

/** What is told at once: where nothing stands in the way by itself, only the order says why. */
export const toldAtOnce = ({ hindrances, pairs }: Refusal): readonly string[] =>
  hindrances.length > 0 ? hindrances : pairs;

export function refusalView(refusal: Refusal): HTMLElement {
  const told = toldAtOnce(refusal);
  return element(
    "div",
    { class: "refusal" },
    element("strong", {}, t`Not yet.`),
    list(told),
    told === refusal.pairs ? undefined : whatComesFirst(refusal.pairs),
  );
}

/** The trainee is left to find it, and can ask. */
const whatComesFirst = (pairs: readonly string[]): HTMLElement =>
  element("details", {}, element("summary", {}, t`Which step comes first?`), list(pairs));

const list = (lines: readonly string[]): HTMLElement =>
  element("ul", {}, ...lines.map((line) => element("li", {}, line)));
