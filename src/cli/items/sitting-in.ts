/** A sitting as text, from a file or a line. */
import type { Quiz } from "../../engine/quiz/quiz.ts";
import type { Answers } from "../../engine/quiz/score.ts";
import { answersByName, paperIn } from "../answers-file.ts";
import { BadInput } from "../command.ts";
import { isHandedIn, readHandedIn } from "../handed-in.ts";
import type { QuizInHand } from "../quiz-file.ts";

export interface SittingIn {
  readonly paper: Quiz;
  readonly answers: Pick<Answers, "get">;
}

/**
 * Answers that someone wrote down, or what a quiz page saved; `at` is its place, for messages. Undefined where the page asked
 * another quiz, or this one as it was before it was changed. Throws a BadInput for what is no sitting.
 */
export function sittingIn(text: string, at: string, quiz: QuizInHand): SittingIn | undefined {
  const value = parsed(text, at);
  if (isHandedIn(value)) return readHandedIn(text, at, quiz);
  return { answers: answersByName(value, at), paper: paperIn(value, quiz.quiz, at) };
}

function parsed(text: string, at: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new BadInput(
      `${at}: is not JSON; expected a sitting: {"answers": {"<question>": <answer>}}, or a file that a quiz page saved`,
    );
  }
}
