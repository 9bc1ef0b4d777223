/** What comes of a quiz for someone who guesses: the exact distribution of the total, and the chance of passing. */
import type { Guess } from "./guess.ts";
import { kindOf, type Question } from "./kinds.ts";
import type { Quiz } from "./quiz.ts";
import { compare, none, plus, type Ratio, ratioOf, times, toNumber, whole } from "./ratio.ts";

export interface Chance {
  /** The chance of passing, from 0 to 1. */
  readonly pass: number;
  /** The total to be expected, in points. */
  readonly mean: number;
  readonly max: number;
  /** Every total that can come out, ascending, with its chance. */
  readonly totals: readonly { readonly score: number; readonly chance: number }[];
}

/** Totals that differ by less than a point's hundredth or so make them many; beyond this nobody waits for it. */
const mostTotals = 100_000;

/**
 * Convolves the questions' own distributions (`guesses` of their kinds), each answer that the page takes being equally
 * likely and questions independent of one another. Sums are of whole numbers, so nothing is rounded before the end.
 * Undefined where more than 100,000 different totals can come out. O(questions · totals · credits of a question).
 */
export function chanceOf(quiz: Quiz, guessesOf = exactGuesses): Chance | undefined {
  const questions = quiz.questions.map((question) => guessed(question, guessesOf(question)));
  const unit = questions
    .flatMap(({ guesses }) => guesses.map(({ points }) => points.bottom))
    .reduce(leastCommonMultiple, 1n);
  const max = quiz.questions.map(({ points }) => ratioOf(points)).reduce(plus, none);
  let sums = new Map<bigint, Ways>([[0n, { sound: 1n, failed: 0n }]]);
  let all = 1n;
  for (const { guesses, ways } of questions) {
    sums = convolved(sums, guesses, unit);
    all *= ways;
    if (sums.size > mostTotals) return undefined;
  }
  return summary(sums, { all, unit, max, pass: times(ratioOf(quiz.pass), max) });
}

/** In how many ways a total comes out: without a failed critical question, and with one. */
interface Ways {
  readonly sound: bigint;
  readonly failed: bigint;
}

interface PointsGuess {
  readonly points: Ratio;
  readonly failed: boolean;
  readonly ways: bigint;
}

export type GuessesOf = (question: Question) => readonly Guess[];

const exactGuesses: GuessesOf = (question) => kindOf(question).guesses(question);

/**
 * No less than what is earned by guessing, and quick: a long order counts as one that everybody gets right. Where even so
 * hardly anybody passes, all its orders need not be gone through.
 */
export const generousGuesses: GuessesOf = (question) =>
  question.kind === "arrange" && question.steps.length > 6
    ? [{ credit: whole, failsCritical: false, ways: 1n }]
    : exactGuesses(question);

function guessed(
  question: Question,
  guesses: readonly Guess[],
): { guesses: readonly PointsGuess[]; ways: bigint } {
  return {
    guesses: guesses.map((guess) => ({
      points: times(guess.credit, ratioOf(question.points)),
      failed: failsQuiz(question, guess),
      ways: guess.ways,
    })),
    ways: guesses.reduce((sum, { ways }) => sum + ways, 0n),
  };
}

const failsQuiz = (question: Question, { credit, failsCritical }: Guess): boolean =>
  failsCritical || (question.critical && compare(credit, whole) !== 0);

function convolved(
  sums: ReadonlyMap<bigint, Ways>,
  guesses: readonly PointsGuess[],
  unit: bigint,
): Map<bigint, Ways> {
  const next = new Map<bigint, Ways>();
  for (const [total, before] of sums) {
    for (const { points, failed, ways } of guesses) {
      const sum = total + (points.top * unit) / points.bottom;
      const was = next.get(sum) ?? { sound: 0n, failed: 0n };
      next.set(sum, {
        sound: was.sound + (failed ? 0n : before.sound * ways),
        failed: was.failed + (before.failed + (failed ? before.sound : 0n)) * ways,
      });
    }
  }
  return next;
}

function summary(
  sums: ReadonlyMap<bigint, Ways>,
  { all, unit, max, pass }: { all: bigint; unit: bigint; max: Ratio; pass: Ratio },
): Chance {
  const totals = [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
  let passing = 0n;
  let weighted = 0n;
  for (const [total, { sound, failed }] of totals) {
    weighted += total * (sound + failed);
    if (compare({ top: total, bottom: unit }, pass) >= 0) passing += sound;
  }
  return {
    pass: toNumber({ top: passing, bottom: all }),
    mean: toNumber({ top: weighted, bottom: all * unit }),
    max: toNumber(max),
    totals: totals.map(([total, { sound, failed }]) => ({
      score: toNumber({ top: total, bottom: unit }),
      chance: toNumber({ top: sound + failed, bottom: all }),
    })),
  };
}

function leastCommonMultiple(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b];
  while (smaller > 0n) [larger, smaller] = [smaller, larger % smaller];
  return (a / larger) * b;
}
