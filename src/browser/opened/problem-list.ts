/** What is wrong, each with its code, so that a coordinator can look it up. */

import type { RecordProblem } from "../../engine/competency/problems.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

const most = 100;

export function problemList(problems: readonly RecordProblem[]): HTMLElement {
  const items = problems.slice(0, most).map(problemItem);
  const more = problems.length - items.length;
  const rest = more === 0 ? [] : [element("li", {}, t`and ${more} more`)];
  return element("ul", { class: "problems" }, ...items, ...rest);
}

const problemItem = ({ code, message, at }: RecordProblem): HTMLElement =>
  element("li", {}, element("code", {}, code), at === undefined ? ": " : t` at ${at}: `, message);
