/** The result of a sitting, in words. */
import type { QuizScore } from "../../engine/quiz/score.ts";
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
    detail: `${number(score)} of ${counted(max, "point")}, ${percent(fraction)}; the pass mark is ${percent(pass)}.${why}`,
  };
}

const criticalWords = (count: number): string =>
  count === 1 ? "a critical question is not" : `${count} critical questions are not`;

/** Rounded down, so that a result just below the mark does not read as the mark. */
const percent = (fraction: number): string => `${Math.floor(fraction * 1000 + 1e-9) / 10} %`;

const number = (value: number): string => String(Math.round(value * 100) / 100);
