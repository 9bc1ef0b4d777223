import { kindOf, type Question } from "./kinds.ts";

/** Places in the written order, as a sitting shows them: drawn by its seed, or as written where the author keeps that order. */
export function shownOrder(question: Question, seed: string): readonly number[] {
  const drawn = kindOf(question).shown(question, seed);
  return question.keepOrder === true ? drawn.toSorted((a, b) => a - b) : drawn;
}
