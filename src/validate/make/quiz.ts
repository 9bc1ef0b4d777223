import { graphOfProcedure } from "../../engine/procedure/graph-of-procedure.ts";
import { restrictForAnswers } from "../../engine/procedure/restrict-for-answers.ts";
import type { Question, QuestionKind } from "../../engine/quiz/kinds.ts";
import { readTolerance } from "../../engine/quiz/tolerance.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { ModuleQuiz } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { Source, YamlPath } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter } from "../reporter.ts";
import type { QuestionData, QuizData } from "../schema/quiz.ts";

interface Making {
  readonly source: Source;
  readonly module: Module;
  readonly reporter: Reporter;
  readonly index: number;
}

type DataOf<Kind extends QuestionKind> = Extract<QuestionData, { kind: Kind }>;

/** A row for each kind; undefined where a fault has been reported. */
const makers: {
  readonly [Kind in QuestionKind]: (data: DataOf<Kind>, making: Making) => Question | undefined;
} = {
  "choose-one": (data) => ({ ...asked(data), kind: "choose-one", options: data.options.map(option) }),
  "choose-several": (data) => ({ ...asked(data), kind: "choose-several", options: data.options.map(option) }),
  number: makeNumber,
  arrange: makeArrange,
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
  return { module: module.id, path: source.path, quiz: { pass: data.pass ?? pass, questions } };
}

const asked = ({ id, ask, why, see, objective, critical, points }: QuestionData) => ({
  id,
  ask,
  why,
  see,
  objective,
  critical,
  points,
});

const option = ({ text, right, why }: DataOf<"choose-one">["options"][number]) => ({ text, right, why });

function makeNumber(data: DataOf<"number">, making: Making): Question | undefined {
  const answer = parseQuantity(String(data.answer));
  if (!answer.ok) return wrongUnit(making, "answer", answer.problem);
  if (data.tolerance === undefined)
    return { ...asked(data), kind: "number", answer: answer.value, tolerance: undefined };
  const tolerance = readTolerance(answer.value, String(data.tolerance));
  if (!tolerance.ok) return wrongUnit(making, "tolerance", tolerance.problem);
  return { ...asked(data), kind: "number", answer: answer.value, tolerance: tolerance.value };
}

function wrongUnit(
  making: Making,
  field: string,
  { found, expected }: { found: string; expected: string },
): undefined {
  report(making, "wrong-unit", [field], `"${field}" reads "${found}"; expected ${expected}`);
}

function makeArrange(data: DataOf<"arrange">, making: Making): Question | undefined {
  const { procedure } = making.module;
  const titles = new Map(procedure.steps.map(({ id, title }) => [id, title]));
  const unknown = data.steps.filter((id) => !titles.has(id));
  for (const id of unknown) {
    report(
      making,
      "unknown-step",
      ["steps", data.steps.indexOf(id)],
      `the module has no step "${id}"${nearestWords(id, titles.keys())}`,
    );
  }
  const isSound = unknown.length === 0 && titles.size === procedure.steps.length;
  const graph = isSound ? graphOfProcedure(procedure).graph : null;
  if (graph === null) return undefined;
  const precedence = restrictForAnswers(graph, data.steps, (id) => titles.get(id) ?? id);
  return {
    ...asked(data),
    kind: "arrange",
    steps: data.steps.map((id) => ({ id, title: titles.get(id)! })),
    precedence,
  };
}

function report(
  { source, reporter, index }: Making,
  code: "wrong-unit" | "unknown-step",
  path: YamlPath,
  found: string,
): void {
  reporter.report(code, { source, yaml: source.data, path: ["questions", index, ...path] }, found);
}
