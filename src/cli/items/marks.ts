/** Marks of single answers, worked out once for those that come again and again. */
import type { Option } from "../../engine/quiz/choice.ts";
import { kindOf, type Question } from "../../engine/quiz/kinds.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";

export interface AnswerMark {
  readonly score: number;
  /** Some of the points, but not all. */
  readonly isInBetween: boolean;
  /** The options that it takes; none where it can't be read, or the question has none. */
  readonly places: readonly number[];
}

/** Texts that people write may differ without end. */
const mostKept = 1000;

/** Of the questions of one quiz. */
export class Marks {
  readonly #kept: readonly Map<unknown, AnswerMark>[];
  readonly #alone: readonly Quiz[];

  constructor({ questions }: Quiz) {
    this.#kept = questions.map(() => new Map());
    this.#alone = questions.map((question) => ({ pass: 1, questions: [question] }));
  }

  /** `question` is the one at the place `item`, with the case that the paper asked. O(1) where it is known, else O(answer). */
  of(item: number, question: Question, given: unknown): AnswerMark {
    // Of a worked question each case has its own key; what is no text and no number is the same for nobody else.
    if (question.kind === "worked") return markOf({ pass: 1, questions: [question] }, given);
    if (typeof given === "object" && given !== null) return markOf(this.#alone[item]!, given);
    const kept = this.#kept[item]!;
    const known = kept.get(given);
    if (known !== undefined) return known;
    const mark = markOf(this.#alone[item]!, given);
    if (kept.size < mostKept) kept.set(given, mark);
    return mark;
  }
}

function markOf(alone: Quiz, given: unknown): AnswerMark {
  const [question] = alone.questions as [Question];
  const [mark] = scoreQuiz(alone, new Map([[question.id, given]])).questions;
  const { score, right } = mark!;
  return { score, isInBetween: score > 0 && !right, places: placesIn(question, given) };
}

export const optionsOf = (question: Question): readonly Option[] =>
  "options" in question ? question.options : [];

function placesIn(question: Question, given: unknown): readonly number[] {
  if (optionsOf(question).length === 0) return [];
  const read = kindOf(question).read(question, given);
  if (read.state !== "answered") return [];
  return Array.isArray(read.answer) ? (read.answer as number[]) : [read.answer as number];
}
