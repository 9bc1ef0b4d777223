/** Reads sittings of a quiz and marks them, one by one, without holding them in memory. */
import type { Option } from "../../engine/quiz/choice.ts";
import { kindOf, type Question } from "../../engine/quiz/kinds.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import { scoreQuiz } from "../../engine/quiz/score.ts";
import type { OptionFacts } from "../../engine/quiz/statistics/advice.ts";
import { Moments } from "../../engine/quiz/statistics/moments.ts";
import { OptionTally } from "../../engine/quiz/statistics/options.ts";
import { answersIn, paperIn } from "../answers-file.ts";
import { BadInput } from "../command.ts";
import { openSittings } from "./open-sittings.ts";

export interface Sittings {
  readonly moments: Moments;
  /** By question; empty where it has no options. */
  readonly options: readonly (readonly OptionFacts[])[];
  readonly isAllOrNothing: readonly boolean[];
}

/**
 * `path` is a file with a sitting a line, or a folder of sittings that were handed in. Throws a BadInput with the place of one
 * that is no sitting, and for a quiz that draws papers: who was not asked a question has not missed it.
 */
export async function readSittings(path: string, quiz: Quiz): Promise<Sittings> {
  if (quiz.paper !== undefined)
    throw new BadInput(
      "This quiz draws papers, so that sittings ask different questions; items compares sittings that all ask the same. Give it the scores of one paper, as .csv.",
    );
  const moments = new Moments(quiz.questions.length);
  const choices = quiz.questions.map((question) => new OptionTally(optionsOf(question).length));
  const inBetween = quiz.questions.map(() => false);
  for await (const { text, at } of openSittings(path)) {
    const value = parsed(text, at);
    const answers = answersIn(value, at);
    const { questions, score, max } = scoreQuiz(paperIn(value, quiz, at), answers);
    moments.add(questions.map((mark) => mark.score));
    for (const [item, question] of quiz.questions.entries()) {
      const mark = questions[item]!;
      if (mark.score > 0 && !mark.right) inBetween[item] = true;
      const places = placesIn(question, answers.get(question.id));
      choices[item]!.add(places, max > mark.max ? (score - mark.score) / (max - mark.max) : 0);
    }
  }
  if (moments.count === 0) throw new BadInput(`${path}: there is no sitting in it`);
  return {
    moments,
    options: quiz.questions.map((question, item) => {
      const counts = choices[item]!.counts();
      return optionsOf(question).map(({ text, right }, place) => ({ text, right, ...counts[place]! }));
    }),
    isAllOrNothing: inBetween.map((is) => !is),
  };
}

function parsed(text: string, at: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new BadInput(
      `${at}: is not JSON; expected a sitting: {"answers": {"<question>": <answer>}}, or a file that a quiz page saved`,
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
