/** The result of a sitting, in words. */
import type { QuizScore } from "../../engine/quiz/score.ts";
import { pointsWords, shareWords } from "../../engine/quiz/score-words.ts";
import { counted } from "../page/words.ts";

export interface ResultWords {
  readonly headline: string;
  readonly detail: string;
}

export function resultWords(
  { score, max, fraction, passed, questions }: QuizScore,
  pass: number,
): ResultWords {
  const critical = questions.filter((mark) => mark.failedCritical).length;
  const reached = fraction >= pass;
  const why = reached && critical > 0 ? ` The mark is reached, but ${criticalWords(critical)} right.` : "";
  return {
    headline: passed ? "Passed" : "Not passed yet",
    detail: `${pointsWords(score)} of ${counted(max, "point")}, ${shareWords(fraction)}; the pass mark is ${shareWords(pass)}.${why}`,
  };
}

const criticalWords = (count: number): string =>
  count === 1 ? "a critical question is not" : `${count} critical questions are not`;
