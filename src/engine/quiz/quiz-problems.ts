import type { Problem } from "../workshop/result.ts";
import { type QuestionProblem, questionProblem } from "./kind.ts";
import type { Question } from "./kinds.ts";
import { poolsOf } from "./paper.ts";
import type { Quiz } from "./quiz.ts";
import { settingOf } from "./settings.ts";

export type QuizCode =
  | "no-questions"
  | "pass-out-of-range"
  | "repeated-question"
  | "paper-too-long"
  | "objective-unknown"
  | "never-drawn";

/** A mistake of the author in the quiz as a whole. `at` points at the questions meant, from 0. */
export interface QuizProblem extends Problem<QuizCode> {
  readonly at: readonly number[];
}

/** Everything wrong with a question that its types do not rule out. */
export function questionProblems(question: Question): readonly QuestionProblem[] {
  const { points } = question;
  const own = settingOf(question).problems(question);
  if (points > 0 && Number.isFinite(points)) return own;
  return [questionProblem("points-out-of-range", `${points} points`, "more than 0 points"), ...own];
}

/** Everything wrong with a quiz as a whole, its questions apart. */
export function quizProblems(quiz: Quiz): readonly QuizProblem[] {
  const { pass, questions } = quiz;
  const problems: QuizProblem[] = [];
  if (questions.length === 0) problems.push(problem("no-questions", "no questions", "one or more", []));
  if (!(pass > 0 && pass <= 1)) {
    problems.push(
      problem("pass-out-of-range", `a pass mark of ${pass * 100} %`, "more than 0 %, at most 100 %", []),
    );
  }
  return [...problems, ...repeated(questions.map(({ id }) => id)), ...paperProblems(quiz)];
}

/** Nothing is drawn that is not there, and there is nothing that is never drawn. */
function paperProblems({ questions, paper }: Quiz): QuizProblem[] {
  if (paper === undefined) return [];
  const pools = poolsOf(questions, paper);
  const drawn = new Set(pools.flatMap(({ pool }) => pool));
  const never = [...questions.keys()].filter((place) => !drawn.has(questions[place]!));
  return [
    ...pools.flatMap(({ name, pool, count }) => {
      if (count <= pool.length) return [];
      if (pool.length === 0 && name !== "")
        return [problem("objective-unknown", `no question for "${name}"`, "an objective of a question", [])];
      const of = name === "" ? "" : ` for "${name}"`;
      return [
        problem("paper-too-long", `${pool.length} questions${of}`, `${count} or more to draw from`, []),
      ];
    }),
    ...never.map((place) =>
      problem("never-drawn", "a question that no paper draws", "an objective that paper: names", [
        place,
        place,
      ]),
    ),
  ];
}

function repeated(ids: readonly string[]): QuizProblem[] {
  const first = new Map<string, number>();
  return ids.flatMap((id, place) => {
    const earlier = first.get(id);
    if (earlier === undefined) first.set(id, place);
    return earlier === undefined
      ? []
      : [problem("repeated-question", `${id} twice`, "each id once", [earlier, place])];
  });
}

function problem(code: QuizCode, found: string, expected: string, at: readonly number[]): QuizProblem {
  return { code, found, expected, nearest: undefined, at };
}
