import { graphOfProcedure } from "../../engine/procedure/graph-of-procedure.ts";
import { restrictForAnswers } from "../../engine/procedure/restrict-for-answers.ts";
import type { Question, QuestionKind } from "../../engine/quiz/kinds.ts";
import type { Paper } from "../../engine/quiz/paper.ts";
import type { Shape } from "../../engine/quiz/shape.ts";
import { type SumName, workSum } from "../../engine/quiz/sums.ts";
import { readTolerance } from "../../engine/quiz/tolerance.ts";
import { convert, parseQuantity, type Quantity } from "../../engine/workshop/quantity.ts";
import type { ModuleQuiz } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import { resolvePath } from "../../model/path.ts";
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

function asked(data: QuestionData) {
  const { id, ask, why, see, objective, critical, points } = data;
  const keepOrder = "keep-order" in data && data["keep-order"] ? { keepOrder: true } : {};
  return { id, ask, why, see, objective, critical, points, ...keepOrder };
}

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

function makeMatch(data: DataOf<"match">): Question {
  return {
    ...asked(data),
    kind: "match",
    items: data.pairs.map(({ item, why }, choice) => ({ text: item, choice, why })),
    choices: [...data.pairs.map((pair) => pair.with), ...data.others.map(({ text }) => text)],
    whyNot: data.others.map(({ why }) => why),
  };
}

/** A path that leads out of the content folder stays as written; the rule for figures reports it. */
function makePoint(data: DataOf<"point">, { source }: Making): Question {
  const { file, alt } = data.figure;
  return {
    ...asked(data),
    kind: "point",
    figure: { file: resolvePath(source.path, file) ?? file, alt },
    places: data.places.map((place) => ({
      text: place.where,
      right: place.right,
      why: place.why,
      shape: shapeOf(place),
    })),
  };
}

function shapeOf({ circle, rectangle }: DataOf<"point">["places"][number]): Shape {
  if (circle !== undefined) {
    const [x, y, r] = circle;
    return { kind: "circle", x, y, r };
  }
  const [x, y, width, height] = rectangle!;
  return { kind: "rectangle", x, y, width, height };
}

function makeSort(data: DataOf<"sort">, making: Making): Question | undefined {
  const items = data.items.map(({ text, group, why }) => ({ text, group: data.groups.indexOf(group), why }));
  for (const [place, { group }] of items.entries()) {
    if (group >= 0) continue;
    const { group: found } = data.items[place]!;
    const words = `there is no group "${found}"${nearestWords(found, data.groups)}`;
    report(making, "quiz-unknown-group", ["items", place, "group"], words);
  }
  if (items.some(({ group }) => group < 0)) return undefined;
  return { ...asked(data), kind: "sort", groups: data.groups, items };
}

function makeWorked(data: DataOf<"worked">, making: Making): Question | undefined {
  const cases = data.cases.map((figures, place) =>
    makeCase(data, new Map(Object.entries(figures)), place, making),
  );
  if (!cases.every((one) => one !== undefined)) return undefined;
  const [first] = cases;
  if (first === undefined || data.tolerance === undefined)
    return { ...asked(data), kind: "worked", cases, tolerance: undefined, chosen: 0 };
  const tolerance = readTolerance(first.answer, String(data.tolerance));
  if (!tolerance.ok) return wrongUnit(making, "tolerance", tolerance.problem);
  return { ...asked(data), ask: first.ask, kind: "worked", cases, tolerance: tolerance.value, chosen: 0 };
}

function makeCase(
  data: DataOf<"worked">,
  figures: ReadonlyMap<string, string>,
  place: number,
  making: Making,
): { ask: string; answer: Quantity } | undefined {
  if (data.sum === "convert" && data.in === undefined)
    return wrongCase(making, place, 'the sum "convert" needs in: the unit to convert to');
  const sum = workSum(data.sum as SumName, figures);
  const told = sum.ok && data.in !== undefined ? convert(sum.value, data.in) : sum;
  if (!told.ok) {
    const { found, expected } = told.problem;
    return wrongCase(making, place, `the case has ${found}; expected ${expected}`);
  }
  const blank = [...data.ask.matchAll(/\{([^{}]*)\}/g)].find(([, name]) => !figures.has(name!));
  if (blank !== undefined)
    return wrongCase(making, place, `"ask" names ${blank[0]}, which the case does not give`);
  return { ask: data.ask.replace(/\{([^{}]*)\}/g, (_, name) => figures.get(name)!), answer: told.value };
}

function wrongCase(making: Making, place: number, words: string): undefined {
  report(making, "quiz-case", ["cases", place], words);
}

function report(
  { source, reporter, index }: Making,
  code: "wrong-unit" | "unknown-step" | "quiz-unknown-group" | "quiz-case",
  path: YamlPath,
  found: string,
): void {
  reporter.report(code, { source, yaml: source.data, path: ["questions", index, ...path] }, found);
}
