import { statSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { type OptionFacts, reasonsToLook, sampleWords } from "../../engine/quiz/statistics/advice.ts";
import type { ItemStatistics, QuizStatistics } from "../../engine/quiz/statistics/item-statistics.ts";
import { paperWords } from "../../engine/quiz/statistics/paper-words.ts";
import { BadInput, type Command, type ExitCode, jsonOption, printJson, WrongCall } from "../command.ts";
import { readQuizFile } from "../quiz-file.ts";
import { type Gathered, gatheredWords, type Skipped } from "./gathered.ts";
import { readFolder } from "./read-folder.ts";
import { readLines } from "./read-lines.ts";
import { reportCsv, reportHtml, reportWords } from "./report.ts";
import { statisticsOfScores } from "./scores.ts";
import { SittingTally } from "./sitting-tally.ts";

export interface ItemReport extends ItemStatistics {
  /** Why to look at it; empty where it has worked. */
  readonly look: readonly string[];
  readonly options: readonly OptionFacts[];
}

export interface Report extends Omit<QuizStatistics, "items"> {
  /** Rows left out. */
  readonly incomplete: number;
  /** What is to be said of the number of sittings. */
  readonly note: string | undefined;
  /** What counts and how it was reckoned, in sentences. */
  readonly notes: readonly string[];
  /** What was found where sittings were read. */
  readonly gathered?: Omit<Gathered, "skipped"> | undefined;
  /** Files, or parts of them, that count for nothing. */
  readonly skipped: readonly Skipped[];
  readonly items: readonly ItemReport[];
}

export const items: Command = {
  name: "items",
  summary: "how the questions of a quiz have worked, from many sittings",
  usage: "FILE|DIR [--quiz FILE] [--all-sittings] [--papers] [--html FILE] [--csv FILE] [--json]",
  words: 1,
  options: {
    quiz: {
      type: "string",
      value: "FILE",
      help: "the quiz, where FILE holds sittings as JSON, one a line, instead of scores as CSV, or DIR holds competency records (.record.json) and sittings that were handed in (.sitting.json)",
    },
    "all-sittings": {
      type: "boolean",
      help: "of records, count every sitting of a person, not only the first",
    },
    papers: {
      type: "boolean",
      help: "of scores as CSV, an empty cell is a question that was not asked; without it, rows with one are left out",
    },
    html: { type: "string", value: "FILE", help: "write a report with plots there" },
    csv: { type: "string", value: "FILE", help: "write the figures there" },
    json: jsonOption,
  },
  async run(call, output): Promise<ExitCode> {
    const [file] = call.positionals;
    if (file === undefined)
      throw new WrongCall(
        "Say which file: scores as .csv, a row a sitting and a column a question, or sittings with --quiz.",
      );
    const quiz = call.text("quiz");
    if (quiz !== undefined && call.flag("papers"))
      throw new WrongCall("--papers is for scores as .csv; of a quiz it is known what each sitting asked.");
    const report =
      quiz === undefined
        ? await ofScores(file, call.flag("papers"))
        : await ofSittings(file, quiz, call.flag("all-sittings"));
    const page = call.text("html");
    const table = call.text("csv");
    if (page !== undefined) writeFileSync(page, reportHtml(report, `Questions: ${basename(file)}`));
    if (table !== undefined) writeFileSync(table, reportCsv(report));
    if (call.flag("json")) printJson(output, report);
    else output.out(reportWords(report));
    return 0;
  },
};

async function ofScores(file: string, papers: boolean): Promise<Report> {
  const { statistics, incomplete } = await statisticsOfScores(file, papers);
  return { ...reportOf(statistics, []), incomplete };
}

async function ofSittings(path: string, quizFile: string, all: boolean): Promise<Report> {
  const quiz = readQuizFile(quizFile);
  const tally = new SittingTally(quiz.quiz);
  const isFolder = statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
  const found = isFolder ? readFolder(path, quiz, all, tally) : await readLines(path, quiz, tally);
  const { skipped, ...gathered } = found;
  const words = gatheredWords(found, all);
  if (tally.count === 0) throw new BadInput(nothing(path, words, skipped));
  const report = reportOf(tally.statistics(), tally.options());
  return { ...report, notes: [...words, ...report.notes], gathered, skipped };
}

const nothing = (path: string, words: readonly string[], skipped: readonly Skipped[]): string =>
  [
    `${path}: there is no sitting of this quiz in it`,
    ...words,
    ...skipped.map(({ file, why }) => `${file}: ${why}`),
  ].join("\n");

function reportOf(statistics: QuizStatistics, options: readonly (readonly OptionFacts[])[]): Report {
  return {
    ...statistics,
    incomplete: 0,
    note: sampleWords(statistics.persons),
    notes: paperWords(statistics),
    skipped: [],
    items: statistics.items.map((item, at) => ({
      ...item,
      options: options[at] ?? [],
      look: reasonsToLook(item, statistics, options[at] ?? []),
    })),
  };
}
