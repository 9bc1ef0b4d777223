/** What is said before questions are closed that nothing could be read from. */
import type { Mark } from "../../engine/quiz/score.ts";
import { t } from "../../engine/words.ts";
import { counted, sentence } from "../page/words.ts";

/**
 * Which have no answer, and which have one that can't be read, with what to write. `open` are their
 * marks with the numbers that the page shows; `press` is the name of the button that closes them all the same.
 */
export function openWords(
  open: readonly { readonly number: number; readonly mark: Mark }[],
  press: string,
): string {
  const blank = open.filter(({ mark }) => mark.problem === undefined);
  const numbers = blank.map(({ number }) => number).join(", ");
  return [
    ...(blank.length === 0 ? [] : [t`Without an answer: ${counted(blank.length, "question")} (${numbers}).`]),
    ...open.flatMap(({ number, mark: { problem } }) =>
      problem === undefined
        ? []
        : [
            t`The answer to question ${number}, “${problem.found}”, can't be read; write ${sentence(problem.expected)}`,
          ],
    ),
    t`Complete your answers, or press “${press}” once more.`,
  ].join(" ");
}
