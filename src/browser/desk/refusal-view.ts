/** Why something is not signed, as the engine says it; or what is to be known although it may be. */

import { type BeforeSigning, mayBeSigned } from "../../engine/competency/before-signing.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import { t } from "../../engine/words.ts";
import { problemList } from "../opened/problem-list.ts";
import { element } from "../page/element.ts";
import { type Naming, nextWords } from "../record/next-words.ts";

/** Undefined where it may be signed. */
export function refusalView(
  before: BeforeSigning,
  naming: Naming,
  card?: ReleaseCard,
): HTMLElement | undefined {
  if (mayBeSigned(before)) return undefined;
  const missing = card === undefined ? [] : before.missing.map((each) => nextWords(each, card, naming).text);
  return element(
    "div",
    { class: "refusal" },
    element("p", { class: "warning" }, t`Nothing was signed. What stands in the way:`),
    before.refusals.length === 0 ? undefined : problemList(before.refusals),
    missing.length === 0
      ? undefined
      : element(
          "ul",
          { class: "problems" },
          ...missing.map((text) => element("li", {}, t`For the trainee to do: ${text}.`)),
        ),
  );
}

export function remarksView({ remarks }: BeforeSigning): HTMLElement | undefined {
  if (remarks.length === 0) return undefined;
  return element("div", {}, element("p", {}, t`Signed. To be known:`), problemList(remarks));
}
