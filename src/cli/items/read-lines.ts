/** Sittings from a file that has one on each line, without holding them in memory. */
import { longestSitting } from "../../engine/quiz/sitting-file.ts";
import type { QuizInHand } from "../quiz-file.ts";
import type { Gathered } from "./gathered.ts";
import { openLines } from "./open-lines.ts";
import { sittingIn } from "./sitting-in.ts";
import type { SittingTally } from "./sitting-tally.ts";

/** Empty lines are left out. Throws a BadInput with the place of a line that is no sitting, or is longer than one may be. */
export async function readLines(file: string, quiz: QuizInHand, tally: SittingTally): Promise<Gathered> {
  let [number, handedIn, otherQuiz] = [0, 0, 0];
  for await (const lines of openLines(file, longestSitting)) {
    for (const text of lines) {
      number++;
      if (text.trim() === "") continue;
      const sitting = sittingIn(text, `${file}:${number}`, quiz);
      if (sitting === undefined) otherQuiz++;
      else {
        handedIn++;
        tally.add(sitting.paper, sitting.answers);
      }
    }
  }
  return { records: 0, handedIn, later: 0, copies: 0, otherQuiz, skipped: [] };
}
