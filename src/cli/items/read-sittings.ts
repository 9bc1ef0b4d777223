/** Reads sittings of a quiz, one a line as JSON, and marks them, without holding the file in memory. */
import type { Option } from "../../engine/quiz/choice.ts";
import { kindOf, type Question } from "../../engine/quiz/kinds.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";
import type { OptionFacts } from "../../engine/quiz/statistics/advice.ts";
import { Moments } from "../../engine/quiz/statistics/moments.ts";
import { OptionTally } from "../../engine/quiz/statistics/options.ts";
import { BadInput } from "../command.ts";
import { answersIn } from "../score.ts";
import { openLines } from "./open-lines.ts";

export interface Sittings {
  readonly moments: Moments;
  /** By question; empty where it has no options. */
  readonly options: readonly (readonly OptionFacts[])[];
  readonly isAllOrNothing: readonly boolean[];
}

/** A line longer than this is no sitting. */
const longestLine = 1024 * 1024;

/** Throws a BadInput with the line for one that is no sitting. */
export async function readSittings(file: string, quiz: Quiz): Promise<Sittings> {
  const moments = new Moments(quiz.questions.length);
  const choices = quiz.questions.map((question) => new OptionTally(optionsOf(question).length));
  const inBetween = quiz.questions.map(() => false);
  let number = 0;
  for await (const line of openLines(file)) {
    number++;
    if (line.trim() === "") continue;
    const answers = answersIn(parsed(line, file, number), `${file}:${number}`);
    const { questions, score, max } = scoreQuiz(quiz, answers);
    moments.add(questions.map((mark) => mark.score));
    for (const [item, question] of quiz.questions.entries()) {
      const mark = questions[item]!;
      if (mark.score > 0 && !mark.right) inBetween[item] = true;
      const places = placesIn(question, answers.get(question.id));
      choices[item]!.add(places, max > mark.max ? (score - mark.score) / (max - mark.max) : 0);
    }
  }
  if (moments.count === 0) throw new BadInput(`${file}: there is no sitting in it`);
  return {
    moments,
    options: quiz.questions.map((question, item) => {
      const counts = choices[item]!.counts();
      return optionsOf(question).map(({ text, right }, place) => ({ text, right, ...counts[place]! }));
    }),
    isAllOrNothing: inBetween.map((is) => !is),
  };
}

function parsed(line: string, file: string, number: number): unknown {
  if (line.length > longestLine)
    throw new BadInput(`${file}:${number}: the line is longer than ${longestLine} characters`);
  try {
    return JSON.parse(line) as unknown;
  } catch {
    throw new BadInput(
      `${file}:${number}: is not JSON; expected a sitting a line: {"answers": {"<question>": <answer>}}`,
    );
  }
}

const optionsOf = (question: Question): readonly Option[] => ("options" in question ? question.options : []);

/** The options that an answer takes; none where it can't be read. */
function placesIn(question: Question, given: unknown): readonly number[] {
  if (optionsOf(question).length === 0) return [];
  const read = kindOf(question).read(question, given);
  if (read.state !== "answered") return [];
  return Array.isArray(read.answer) ? (read.answer as number[]) : [read.answer as number];
}
