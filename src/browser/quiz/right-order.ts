/** After an arrangement was checked and is not right: a right one, and how to come to it. */

import { arrange, orderAnswer } from "../../engine/quiz/arrange.ts";
import type { QuestionOf } from "../../engine/quiz/kinds.ts";
import { t } from "../../engine/words.ts";
import { moveWords } from "../arranging/move-words.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";

/** The right order nearest to the answer, as the field gives it; where nothing was, the written one. */
export function rightOrder(question: QuestionOf<"arrange">, answer: unknown): HTMLElement[] {
  const titles = new Map(question.steps.map(({ id, title }) => [id, title]));
  const title = (step: string): string => titles.get(step) ?? step;
  const read = arrange.read(question, answer);
  const given = read.state === "answered" ? read.answer : [];
  const { fixed, fix } = orderAnswer(question, given);
  const list = (tag: "ol" | "ul", lines: readonly string[]) =>
    element(tag, {}, ...lines.map((line) => element("li", {}, line)));
  const steps = [element("p", {}, t`One right order:`), list("ol", fixed.map(title))];
  if (given.length === 0) return steps;
  const moves = t`${counted(fix.length, "move")} ${fix.length === 1 ? t`makes` : t`make`} yours into it:`;
  return [
    ...steps,
    element("p", {}, moves),
    list(
      "ul",
      fix.map((move) => `${moveWords(move, title)}.`),
    ),
  ];
}
