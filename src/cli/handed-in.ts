/** A sitting that was handed in as a file, marked from the content folder. */
import {
  type MarkedSitting,
  markSitting,
  readSittingFile,
  type SittingCode,
  type SittingFile,
} from "../engine/quiz/sitting-file.ts";
import { BadInput } from "./command.ts";
import type { QuizInHand } from "./quiz-file.ts";

export interface HandedIn extends MarkedSitting {
  readonly sitting: SittingFile;
  readonly quiz: QuizInHand;
}

/** It says of itself that it is one; whatever else is wrong with it is told when it is read. */
export const isHandedIn = (value: unknown): boolean =>
  typeof value === "object" && value !== null && Object.hasOwn(value, "sitting");

/** `quizOf` finds the quiz of a module. Throws a BadInput that says what is wrong with the file, and what to do. */
export function markHandedIn(text: string, file: string, quizOf: (module: string) => QuizInHand): HandedIn {
  const read = readSittingFile(text);
  if (!read.ok) throw new BadInput(refusal(file, read.problem));
  const quiz = quizOf(read.value.module);
  const marked = markSitting(quiz.quiz, quiz, read.value);
  if (!marked.ok) throw new BadInput(refusal(file, marked.problem));
  return { ...marked.value, sitting: read.value, quiz };
}

const ofOtherQuiz: ReadonlySet<SittingCode> = new Set(["other-module", "other-revision", "other-quiz"]);

/** The paper and the answers of one; undefined where it is of another quiz than this. Throws a BadInput where it is no sitting. */
export function readHandedIn(text: string, file: string, quiz: QuizInHand) {
  const read = readSittingFile(text);
  if (!read.ok) throw new BadInput(refusal(file, read.problem));
  const marked = markSitting(quiz.quiz, quiz, read.value);
  if (marked.ok) return { paper: marked.value.paper, answers: read.value.answers };
  if (ofOtherQuiz.has(marked.problem.code)) return undefined;
  throw new BadInput(refusal(file, marked.problem));
}

const advice: Readonly<Record<SittingCode, string>> = {
  "too-large": "A sitting is a small file; ask for the one that the page saved.",
  "not-json": "Ask for the file that the page saved, unchanged.",
  "not-a-sitting": "Ask for the file that the page saved, unchanged.",
  "other-module": "Mark it with the quiz of its own module, or by --content alone, which finds it.",
  "other-revision":
    "Its questions were others: mark it with the content as it was, or have the quiz sat again on the site of today.",
  "other-quiz":
    "The quiz was changed within this revision since that page was built: mark it with the content as it was, or build the site anew and have the quiz sat again.",
};

function refusal(file: string, problem: { code: SittingCode; found: string; expected: string }): string {
  return `${file}: found ${problem.found}; expected ${problem.expected}. ${advice[problem.code]}`;
}
