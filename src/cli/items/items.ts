import { writeFileSync } from "node:fs";
import { basename } from "node:path";
import { type OptionFacts, reasonsToLook, sampleWords } from "../../engine/quiz/statistics/advice.ts";
import {
  type ItemStatistics,
  itemStatistics,
  type QuizStatistics,
} from "../../engine/quiz/statistics/item-statistics.ts";
import { Moments } from "../../engine/quiz/statistics/moments.ts";
import { type Command, type ExitCode, jsonOption, printJson, WrongCall } from "../command.ts";
import { readQuizFile } from "../quiz-file.ts";
import { readScores } from "./read-scores.ts";
import { readSittings } from "./read-sittings.ts";
import { reportCsv, reportHtml, reportWords } from "./report.ts";

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
  readonly items: readonly ItemReport[];
}

export const items: Command = {
  name: "items",
  summary: "how the questions of a quiz have worked, from many sittings",
  usage: "FILE [--quiz FILE] [--html FILE] [--csv FILE] [--json]",
  words: 1,
  options: {
    quiz: {
      type: "string",
      value: "FILE",
      help: "the quiz, where FILE holds sittings as JSON, one a line, or is a folder of sittings that were handed in (.sitting.json), instead of scores as CSV",
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
    const report = quiz === undefined ? await ofScores(file) : await ofSittings(file, quiz);
    const page = call.text("html");
    const table = call.text("csv");
    if (page !== undefined) writeFileSync(page, reportHtml(report, `Questions: ${basename(file)}`));
    if (table !== undefined) writeFileSync(table, reportCsv(report));
    if (call.flag("json")) printJson(output, report);
    else output.out(reportWords(report));
    return 0;
  },
};

async function ofScores(file: string): Promise<Report> {
  let moments = new Moments(0);
  const { ids, max, isAllOrNothing, incomplete } = await readScores(file, (count) => {
    moments = new Moments(count);
    return (scores) => moments.add(scores);
  });
  const keys = ids.map((id, item) => ({ id, max: max[item]!, isAllOrNothing: isAllOrNothing[item]! }));
  return reportOf(itemStatistics(moments, keys), incomplete, []);
}

async function ofSittings(file: string, quizFile: string): Promise<Report> {
  const { quiz } = readQuizFile(quizFile);
  const { moments, options, isAllOrNothing } = await readSittings(file, quiz);
  const keys = quiz.questions.map(({ id, points }, item) => ({
    id,
    max: points,
    isAllOrNothing: isAllOrNothing[item]!,
  }));
  return reportOf(itemStatistics(moments, keys), 0, options);
}

function reportOf(
  statistics: QuizStatistics,
  incomplete: number,
  options: readonly (readonly OptionFacts[])[],
): Report {
  return {
    ...statistics,
    incomplete,
    note: sampleWords(statistics.persons),
    items: statistics.items.map((item, at) => ({
      ...item,
      options: options[at] ?? [],
      look: reasonsToLook(item, statistics, options[at] ?? []),
    })),
  };
}
