import { type Chance, chanceOf } from "../engine/quiz/chance.ts";
import { pointsWords } from "../engine/quiz/score-words.ts";
import { type Command, jsonOption, printJson } from "./command.ts";
import { quizOption, readQuizFile } from "./quiz-file.ts";

export const chance: Command = {
  name: "chance",
  summary: "how likely someone who guesses passes a quiz, exactly",
  usage: "--quiz FILE [--json]",
  options: { quiz: quizOption, json: jsonOption },
  run(call, output) {
    const { quiz } = readQuizFile(call.text("quiz"));
    const found = chanceOf(quiz);
    if (call.flag("json")) printJson(output, found ?? { pass: null, mean: null, max: null, totals: null });
    else output.out(found === undefined ? tooMany : chanceWords(found, quiz.pass));
    return 0;
  },
};

const tooMany =
  "More than 100,000 different totals can come out of this quiz: the chance is not worked out. Give its questions points that are alike.\n";

function chanceWords({ pass, mean, max, totals }: Chance, mark: number): string {
  const rows = totals
    .filter(({ chance: each }) => each >= 0.0005)
    .map(({ score, chance: each }) => `  ${pointsWords(score).padStart(8)}  ${percent(each).padStart(7)}`);
  return [
    `Someone who guesses passes with a chance of ${percent(pass)}${pass > 0 && pass < 0.1 ? `, about one time in ${Math.round(1 / pass).toLocaleString("en")}` : ""}, and earns ${pointsWords(mean)} of ${pointsWords(max)} points on average.`,
    `The pass mark is ${percent(mark)}. Every answer that the page takes is held to be equally likely; a figure is not guessed.`,
    "",
    "    points   chance (those of 0.05 % and more)",
    ...rows,
    "",
  ].join("\n");
}

const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;
