/** Sittings from a folder of records and of sittings that were handed in, without holding more than one file in memory. */
import { basename } from "node:path";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import { digestOfQuiz } from "../../engine/competency/release-digests.ts";
import { drawPaper } from "../../engine/quiz/paper.ts";
import { readAnswersText } from "../answers-file.ts";
import { BadInput } from "../command.ts";
import { filesIn } from "../files-in.ts";
import { nodePrimitives } from "../primitives.ts";
import type { QuizInHand } from "../quiz-file.ts";
import { readRecordFile } from "../record/record-files.ts";
import type { Gathered, Skipped } from "./gathered.ts";
import { RecordSittings } from "./record-sittings.ts";
import { sittingIn } from "./sitting-in.ts";
import type { SittingTally } from "./sitting-tally.ts";

const record = ".record.json";
const handedIn = ".sitting.json";

/**
 * Adds up the sittings of a quiz that stand in the `*.record.json` and `*.sitting.json` files below a folder. Files that can't be relied
 * on are left out and told. Throws a BadInput where the folder can't be read.
 */
export function readFolder(folder: string, quiz: QuizInHand, all: boolean, tally: SittingTally): Gathered {
  const reader = new FolderReader(quiz, all, tally);
  for (const file of filesIn(folder, [record, handedIn])) {
    if (basename(file).endsWith(record)) reader.readRecord(file);
    else reader.readHandedIn(file);
  }
  return reader.gathered();
}

class FolderReader {
  readonly #quiz: QuizInHand;
  readonly #tally: SittingTally;
  readonly #records: RecordSittings;
  readonly #counts = { records: 0, handedIn: 0, later: 0, copies: 0, otherQuiz: 0 };
  readonly #skipped: Skipped[] = [];

  constructor(quiz: QuizInHand, all: boolean, tally: SittingTally) {
    this.#quiz = quiz;
    this.#tally = tally;
    const digest = digestOfQuiz(quiz.quiz, nodePrimitives);
    this.#records = new RecordSittings({ module: quiz.module, digest, all });
  }

  /** One that its owner has not signed, or not as it stands, counts for nothing; of others the events that are whole. */
  readRecord(file: string): void {
    const { record: read, problems } = readRecordFile(file);
    this.#skipped.push(...problems.map((problem) => ({ file, why: wordsOf(problem) })));
    if (read === undefined || problems.some(({ code }) => code === "owner-signature")) return;
    const picked = this.#records.pick(read);
    this.#counts.records++;
    for (const name of ["later", "copies", "otherQuiz"] as const) this.#counts[name] += picked[name];
    for (const { seed, preferred, answers } of picked.sittings)
      this.#tally.add(drawPaper(this.#quiz.quiz, seed, new Set(preferred)), new Map(answers));
  }

  readHandedIn(file: string): void {
    try {
      const sitting = sittingIn(readAnswersText(file), file, this.#quiz);
      if (sitting === undefined) this.#counts.otherQuiz++;
      else {
        this.#counts.handedIn++;
        this.#tally.add(sitting.paper, sitting.answers);
      }
    } catch (cause) {
      if (!(cause instanceof BadInput)) throw cause;
      this.#skipped.push({ file, why: cause.message.replace(`${file}: `, "") });
    }
  }

  gathered(): Gathered {
    return { ...this.#counts, skipped: this.#skipped };
  }
}

const wordsOf = ({ message, at }: RecordProblem): string =>
  at === undefined ? message : `${at}: ${message}`;
