import { t } from "../words.ts";
import type { Problem } from "../workshop/result.ts";
import type { AnswerCode, Given, Judgement, Remark } from "./kind.ts";
import { kindOf, type Question } from "./kinds.ts";
import type { Quiz } from "./quiz.ts";
import { compare, none, over, plus, type Ratio, ratioOf, times, toNumber, whole } from "./ratio.ts";

/** Answers by the id of the question, as they come from JSON. */
export type Answers = ReadonlyMap<string, unknown>;

/** What one question earned. */
export interface Mark {
  readonly id: string;
  readonly score: number;
  readonly max: number;
  /** It earned everything. */
  readonly right: boolean;
  readonly answered: boolean;
  /** It is a critical question and not right, or its answer holds a mistake that ruins or hurts. */
  readonly failedCritical: boolean;
  /** Why an answer that was given could not be read. */
  readonly problem: Problem<AnswerCode> | undefined;
}

export interface QuizScore {
  readonly score: number;
  readonly max: number;
  /** score / max; 0 of a quiz without points. */
  readonly fraction: number;
  /** The fraction reaches the pass mark, and no question failed as a critical one. */
  readonly passed: boolean;
  readonly questions: readonly Mark[];
  /** Ids that answers were given to and that the quiz does not have; they earn nothing and cost nothing. */
  readonly unknown: readonly string[];
}

/**
 * Marks a quiz. A question without an answer, with a blank one or one of the wrong kind earns 0, and counts as not
 * answered. Sums and the comparison with the pass mark are exact (`ratio.ts`); the numbers given back are rounded from
 * them. Nothing depends on the order in which options or steps were shown.
 */
export function scoreQuiz(quiz: Quiz, answers: Answers): QuizScore {
  const { points, max, pass, known } = weightsOf(quiz);
  const marked = quiz.questions.map((question, at) =>
    markQuestion(question, points[at]!, answers.get(question.id)),
  );
  const score = sum(marked.map(({ earned }) => earned));
  const fraction = compare(max, none) > 0 ? over(score, max) : none;
  return {
    score: toNumber(score),
    max: toNumber(max),
    fraction: toNumber(fraction),
    passed: compare(fraction, pass) >= 0 && !marked.some(({ mark }) => mark.failedCritical),
    questions: marked.map(({ mark }) => mark),
    unknown: [...answers.keys()].filter((id) => !known.has(id)),
  };
}

/** What to say about the answer to a question, from untrusted JSON; one that can't be read is named as wrong. */
export function remarksOn(question: Question, given: unknown): readonly Remark[] {
  const kind = kindOf(question);
  const read = kind.read(question, given);
  if (read.state === "answered") return kind.remarks(question, read.answer);
  const missed = kind.remarks(question, undefined);
  if (read.state === "blank") return missed;
  const { found, expected } = read.problem;
  return [{ verdict: "wrong", about: [found], because: t`expected ${expected}` }, ...missed];
}

interface Weights {
  readonly points: readonly Ratio[];
  readonly max: Ratio;
  readonly pass: Ratio;
  readonly known: ReadonlySet<string>;
}

/** Of quizzes that were marked before: many sittings of one quiz are marked one after the other. */
const remembered = new WeakMap<Quiz, Weights>();

function weightsOf(quiz: Quiz): Weights {
  const earlier = remembered.get(quiz);
  if (earlier !== undefined) return earlier;
  const points = quiz.questions.map((question) => ratioOf(question.points));
  const known = new Set(quiz.questions.map(({ id }) => id));
  const weights = { points, max: sum(points), pass: ratioOf(quiz.pass), known };
  remembered.set(quiz, weights);
  return weights;
}

interface Marked {
  readonly mark: Mark;
  readonly earned: Ratio;
}

function markQuestion(question: Question, points: Ratio, given: unknown): Marked {
  const kind = kindOf(question);
  const read = kind.read(question, given);
  const { credit, failsCritical } = judge(question, read);
  const earned = times(credit, points);
  const right = compare(credit, whole) === 0;
  const mark = {
    id: question.id,
    score: toNumber(earned),
    max: question.points,
    right,
    answered: read.state === "answered",
    failedCritical: failsCritical || (question.critical && !right),
    problem: read.state === "unreadable" ? read.problem : undefined,
  };
  return { mark, earned };
}

function judge(question: Question, read: Given<unknown>): Judgement {
  if (read.state !== "answered") return { credit: none, failsCritical: false };
  return kindOf(question).judge(question, read.answer);
}

function sum(parts: readonly Ratio[]): Ratio {
  return parts.reduce(plus, none);
}
