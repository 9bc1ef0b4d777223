/** Of all papers that can be drawn, the one that someone who guesses passes most easily. */
import { chanceOf, exactGuesses, type GuessesOf } from "./chance.ts";
import type { Question } from "./kinds.ts";
import { poolsOf } from "./paper.ts";
import type { Quiz } from "./quiz.ts";

export interface WorstPaper {
  /** The chance of passing it, from 0 to 1. */
  readonly pass: number;
  /** Ids of its questions; of several such papers, one. */
  readonly questions: readonly string[];
}

/** Papers that differ in more ways than these are not gone through. */
const mostKinds = 400;

/**
 * Questions that a guesser fares alike with are told apart by nothing, so only papers are tried that hold different numbers
 * of them. Undefined where the quiz draws no paper, where more than 400 papers differ so, or where a chance is not worked
 * out. O(papers · that of `chanceOf`).
 */
export function worstPaper(quiz: Quiz, guessesOf: GuessesOf = exactGuesses): WorstPaper | undefined {
  if (quiz.paper === undefined) return undefined;
  const known = new Map(quiz.questions.map((question) => [question, guessesOf(question)]));
  let papers: (readonly Question[])[] = [[]];
  for (const { pool, count } of poolsOf(quiz.questions, quiz.paper)) {
    const choices = choicesOf(alikeIn(pool, known), count);
    if (choices === undefined || choices.length * papers.length > mostKinds) return undefined;
    papers = papers.flatMap((paper) => choices.map((more) => [...paper, ...more]));
  }
  let worst: WorstPaper | undefined;
  for (const paper of papers) {
    const questions = quiz.questions.filter((question) => paper.includes(question));
    const chance = chanceOf({ ...quiz, questions, paper: undefined }, (question) => known.get(question)!);
    if (chance === undefined) return undefined;
    if (worst === undefined || chance.pass > worst.pass)
      worst = { pass: chance.pass, questions: questions.map(({ id }) => id) };
  }
  return worst;
}

/** Questions that earn and fail alike, in groups. */
function alikeIn(
  pool: readonly Question[],
  known: ReadonlyMap<Question, ReturnType<GuessesOf>>,
): (readonly Question[])[] {
  const groups = new Map<string, Question[]>();
  for (const question of pool) {
    const guesses = known
      .get(question)!
      .map(({ credit, failsCritical, ways }) => `${credit.top}/${credit.bottom} ${failsCritical} ${ways}`);
    const key = [question.points, question.critical, ...guesses.toSorted()].join(";");
    groups.set(key, [...(groups.get(key) ?? []), question]);
  }
  return [...groups.values()];
}

/** Every choice of so many that differs in how many of each group it takes; undefined where they are too many. */
function choicesOf(
  groups: readonly (readonly Question[])[],
  count: number,
): (readonly Question[])[] | undefined {
  let choices: (readonly Question[])[] = [[]];
  let left = groups.reduce((sum, { length }) => sum + length, 0);
  const needed = Math.min(count, left);
  for (const group of groups) {
    left -= group.length;
    choices = choices.flatMap((choice) => {
      const fewest = Math.max(0, needed - choice.length - left);
      const most = Math.min(group.length, needed - choice.length);
      return Array.from({ length: most - fewest + 1 }, (_, more) => [
        ...choice,
        ...group.slice(0, fewest + more),
      ]);
    });
    if (choices.length > mostKinds) return undefined;
  }
  return choices;
}
