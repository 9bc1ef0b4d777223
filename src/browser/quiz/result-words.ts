/** The result of a sitting, in words. */

import type { QuizScore } from "../../engine/quiz/score.ts";
import { markWords, pointsWords, shareWords } from "../../engine/quiz/score-words.ts";
import { t } from "../../engine/words.ts";
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
  const why = reached && critical > 0 ? t` The mark is reached, but ${criticalWords(critical)} right.` : "";
  return {
    headline: passed ? t`Passed` : t`Not passed yet`,
    detail: t`${pointsWords(score)} of ${counted(max, "point")}, ${shareWords(fraction)}; the pass mark is ${markWords(pass)}.${why}`,
  };
}

const criticalWords = (count: number): string =>
  count === 1 ? t`a critical question is not` : t`${count} critical questions are not`;
