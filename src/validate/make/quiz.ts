import type { Question, QuestionKind } from "../../engine/quiz/kinds.ts";
import type { Paper } from "../../engine/quiz/paper.ts";
import type { ModuleQuiz } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { Source } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import type { QuestionData, QuizData } from "../schema/quiz.ts";
import { asked, type DataOf, type Making } from "./questions/making.ts";
import { makeArrange, makeMatch, makeSort } from "./questions/placed.ts";
import { makePoint } from "./questions/point.ts";
import { makeNumber, makeWorked } from "./questions/written.ts";

/** A row for each kind; undefined where a fault has been reported. */
const makers: {
  readonly [Kind in QuestionKind]: (data: DataOf<Kind>, making: Making) => Question | undefined;
} = {
  "choose-one": (data) => ({ ...asked(data), kind: "choose-one", options: data.options.map(option) }),
  "choose-several": (data) => ({ ...asked(data), kind: "choose-several", options: data.options.map(option) }),
  number: makeNumber,
  arrange: makeArrange,
  match: (data) => makeMatch(data),
  text: (data) => ({
    ...asked(data),
    kind: "text",
    answers: data.answers,
    slips: data.slips,
    mistakes: data.mistakes,
  }),
  point: makePoint,
  sort: makeSort,
  worked: makeWorked,
};

/** `pass` is the programme's mark, for a quiz that states none. A quiz with a faulty question is left out. */
export function makeQuiz(
  source: Source,
  data: QuizData,
  module: Module,
  pass: number,
  reporter: Reporter,
): ModuleQuiz | undefined {
  const questions = data.questions.map((question, index) => {
    const make = makers[question.kind] as (data: QuestionData, making: Making) => Question | undefined;
    return make(question, { source, module, reporter, index });
  });
  if (!questions.every((question) => question !== undefined)) return undefined;
  const { supervised } = data;
  const quiz = { pass: data.pass ?? pass, questions, paper: paperOf(data.paper), supervised };
  return { module: module.id, path: source.path, quiz };
}

function paperOf(data: QuizData["paper"]): Paper | undefined {
  if (data === undefined) return undefined;
  if (typeof data === "number") return { kind: "count", count: data };
  const counts = Object.entries(data.objectives).map(([objective, count]) => ({ objective, count }));
  return { kind: "objectives", counts };
}

const option = ({ text, right, why }: DataOf<"choose-one">["options"][number]) => ({ text, right, why });
