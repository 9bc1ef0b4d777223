import { type Chance, chanceOf } from "../engine/quiz/chance.ts";
import { paperLength } from "../engine/quiz/paper.ts";
import type { Quiz } from "../engine/quiz/quiz.ts";
import { pointsWords } from "../engine/quiz/score-words.ts";
import { type WorstPaper, worstPaper } from "../engine/quiz/worst-paper.ts";
import { type Command, jsonOption, printJson } from "./command.ts";
import { grouped } from "./order-count.ts";
import { quizOption, readQuizFile } from "./quiz-file.ts";

export const chance: Command = {
  name: "chance",
  summary: "how likely someone who guesses passes a quiz, exactly",
  usage: "--quiz FILE [--json]",
  options: { quiz: quizOption, json: jsonOption },
  run(call, output) {
    const { quiz } = readQuizFile(call.text("quiz"));
    const found = chanceOf(quiz);
    const worst = found === undefined ? undefined : worstPaper(quiz);
    if (call.flag("json")) printJson(output, found === undefined ? unknown : inJson(found, worst));
    else output.out(found === undefined ? tooMany : chanceWords(found, quiz, worst));
    return 0;
  },
};

const unknown = { pass: null, mean: null, max: null, totals: null, papers: null, worst: null };

const inJson = ({ papers, ...found }: Chance, worst: WorstPaper | undefined) => ({
  ...found,
  papers: String(papers),
  worst: worst ?? null,
});

const tooMany =
  "More than 100,000 different totals can come out of this quiz: the chance is not worked out. Give its questions points that are alike.\n";

function chanceWords(found: Chance, quiz: Quiz, worst: WorstPaper | undefined): string {
  const { pass, mean, max, totals } = found;
  const rows = totals
    .filter(({ chance: each }) => each >= 0.0005)
    .map(({ score, chance: each }) => `  ${pointsWords(score).padStart(8)}  ${percent(each).padStart(7)}`);
  return [
    `Someone who guesses passes with a chance of ${percent(pass)}${odds(pass)}, and earns ${pointsWords(mean)} of ${pointsWords(max)} points on average.`,
    `The pass mark is ${percent(quiz.pass)}. Every answer that the page takes is held to be equally likely; a figure is not guessed.`,
    ...paperWords(found, quiz, worst),
    "",
    "    points   chance (those of 0.05 % and more)",
    ...rows,
    "",
  ].join("\n");
}

/** What holds where a paper is drawn: over which papers the chance is taken, and which is easiest to guess. */
function paperWords({ papers, pass }: Chance, quiz: Quiz, worst: WorstPaper | undefined): string[] {
  if (papers === 1n) return [];
  const lead = `Over all ${grouped(papers)} papers of ${paperLength(quiz)} from ${quiz.questions.length} questions, each equally likely, as a first sitting draws them.`;
  if (worst === undefined) return [lead];
  if (worst.pass <= pass) return [`${lead} No paper is easier to guess than another.`];
  return [
    `${lead} The paper that is easiest to guess is passed with a chance of ${percent(worst.pass)}${odds(worst.pass)}: ${worst.questions.join(", ")}.`,
  ];
}

const odds = (pass: number): string =>
  pass > 0 && pass < 0.1 ? `, about one time in ${Math.round(1 / pass).toLocaleString("en")}` : "";

const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;
