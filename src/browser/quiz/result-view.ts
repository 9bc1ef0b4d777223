/** The result of a sitting: the score, and the faults to go over. */

import type { ToGoOver } from "../../engine/quiz/review.ts";
import type { QuizScore } from "../../engine/quiz/score.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";
import type { QuestionView } from "./question-view.ts";
import { resultWords } from "./result-words.ts";

export interface ResultOptions {
  readonly score: QuizScore;
  readonly pass: number;
  readonly sitting: number;
  /** Of the whole pool, by id. */
  readonly views: ReadonlyMap<string, QuestionView>;
  readonly toGoOver: readonly ToGoOver[];
  /** The button to sit again, or when one may. */
  readonly again: HTMLElement;
}

export function resultView({ score, pass, sitting, views, toGoOver, again }: ResultOptions): HTMLElement {
  const { headline, detail } = resultWords(score, pass);
  const missedNow = new Map(score.questions.map((mark) => [mark.id, mark]));
  const faults = toGoOver.map((fault) =>
    faultLine(views.get(fault.id)!, fault, missedNow.has(fault.id), missedNow.get(fault.id)?.failedCritical),
  );
  return element(
    "section",
    { class: score.passed ? "result is-right" : "result is-wrong" },
    element("h2", { tabindex: "-1" }, headline),
    element("p", {}, t`Sitting ${sitting}: ${detail}`),
    ...(faults.length === 0
      ? []
      : [element("h3", {}, t`Faults to go over`), element("p", {}, rule), element("ul", {}, ...faults)]),
    element("div", { class: "actions" }, again),
  );
}

/** As `toGoOver` reckons. */
const rule = t`For the next workshop evening. A question stays on this list until you have got it right once more, a critical one twice running.`;

/** `asked`: it stands on this paper. */
function faultLine(
  { item: { see }, root, question }: QuestionView,
  { missed, rightSince }: ToGoOver,
  asked: boolean,
  critical = question.critical,
): HTMLLIElement {
  const ask = asked ? element("a", { href: `#${root.id}` }, question.ask) : question.ask;
  const times = missed > 1 ? t` Missed ${counted(missed, "time")}.` : "";
  const since = rightSince > 0 ? t` Right since, and once more to go.` : "";
  const reading =
    see === undefined ? [] : [t` Read again: `, element("a", { href: see.href }, see.text), "."];
  return element(
    "li",
    {},
    critical ? element("strong", {}, t`Critical. `) : undefined,
    ask,
    times + since,
    ...reading,
  );
}
