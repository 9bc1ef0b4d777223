/** The result of a sitting: the score, and the faults to go over. */
import type { QuizScore } from "../../engine/quiz/score.ts";
import { button, element } from "../page/element.ts";
import type { QuestionView } from "./question-view.ts";
import { resultWords } from "./result-words.ts";

export interface ResultOptions {
  readonly score: QuizScore;
  readonly pass: number;
  readonly sitting: number;
  readonly questions: readonly QuestionView[];
  readonly sitAgain: () => void;
}

export function resultView({ score, pass, sitting, questions, sitAgain }: ResultOptions): HTMLElement {
  const { headline, detail } = resultWords(score, pass);
  const faults = score.questions.flatMap((mark, at) =>
    mark.right ? [] : [faultLine(questions[at]!, at + 1, mark.failedCritical)],
  );
  const again =
    faults.length === 0 ? [] : [element("h3", {}, "Faults to go over"), element("ul", {}, ...faults)];
  return element(
    "section",
    { class: score.passed ? "result is-right" : "result is-wrong" },
    element("h2", { tabindex: "-1" }, headline),
    element("p", {}, `Sitting ${sitting}: ${detail}`),
    ...again,
    element("div", { class: "actions" }, button("Sit again", sitAgain)),
  );
}

function faultLine(
  { item: { question, see } }: QuestionView,
  number: number,
  critical: boolean,
): HTMLLIElement {
  const ask = element("a", { href: `#question-${number}` }, `${number}. ${question.ask}`);
  const reading = see === undefined ? [] : [" Read again: ", element("a", { href: see.href }, see.text), "."];
  return element("li", {}, critical ? element("strong", {}, "Critical. ") : undefined, ask, ...reading);
}
