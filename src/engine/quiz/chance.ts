/** What comes of a quiz for someone who guesses: the exact distribution of the total, and the chance of passing. */
import { type Counted, nothing, type Sums, withSomeOf } from "./chance-sums.ts";
import { choose, type Guess } from "./guess.ts";
import type { Question } from "./kinds.ts";
import { poolsOf } from "./paper.ts";
import type { Quiz } from "./quiz.ts";
import { compare, none, plus, type Ratio, ratioOf, times, toNumber, whole } from "./ratio.ts";
import { settingOf } from "./settings.ts";

export interface Chance {
  /** The chance of passing, from 0 to 1: the mean over all papers that can be drawn, each as likely as any other. */
  readonly pass: number;
  /** The total to be expected, in points. */
  readonly mean: number;
  /** The most points that a paper can have. */
  readonly max: number;
  /** Every total that can come out, ascending, with its chance. */
  readonly totals: readonly { readonly score: number; readonly chance: number }[];
  /** How many different papers can be drawn; 1 where the quiz asks all its questions. */
  readonly papers: bigint;
}

/**
 * Convolves the questions' own distributions (`guesses` of their kinds), each answer that the page takes being equally
 * likely and questions independent of one another. Where a paper is drawn, over all choices of so many from each pool
 * (`withSomeOf`), as a first sitting draws them; what a later one prefers is not reckoned with. Whether a total passes is
 * judged against the most points of its own paper. Sums are of whole numbers, so nothing is rounded before the end.
 * Undefined where more than 100,000 different totals can come out.
 */
export function chanceOf(quiz: Quiz, guessesOf = exactGuesses): Chance | undefined {
  const guessed = new Map(quiz.questions.map((question) => [question, guessesFor(question, guessesOf)]));
  const unit = [...guessed.values()].flatMap(({ bottoms }) => bottoms).reduce(leastCommonMultiple, 1n);
  // More than the points of all questions together, so that two sums in one key never mix.
  const all = quiz.questions.map(({ points }) => ratioOf(points)).reduce(plus, none);
  const span = (all.top * unit) / all.bottom + 1n;
  let sums: Sums | undefined = nothing;
  let ways = 1n;
  let papers = 1n;
  for (const { pool, count } of drawnFrom(quiz)) {
    const each = pool.map((question) => guessed.get(question)!);
    const common = each.map((one) => one.ways).reduce(leastCommonMultiple, 1n);
    const counted = each.map((one) => inUnits(one, { unit, span, common }));
    sums = withSomeOf(sums, counted, count);
    if (sums === undefined) return undefined;
    papers *= choose(pool.length, count);
    ways *= common ** BigInt(count);
  }
  return { ...summary(sums, { ways: ways * papers, unit, span, pass: ratioOf(quiz.pass) }), papers };
}

/** What is drawn from what: all questions from themselves where there is no paper. */
function drawnFrom({ questions, paper }: Quiz): { pool: readonly Question[]; count: number }[] {
  if (paper === undefined) return [{ pool: questions, count: questions.length }];
  return poolsOf(questions, paper).map(({ pool, count }) => ({ pool, count: Math.min(count, pool.length) }));
}

interface Guessed {
  readonly guesses: readonly { readonly points: Ratio; readonly failed: boolean; readonly ways: bigint }[];
  readonly max: Ratio;
  readonly ways: bigint;
  /** Of all its points, as fractions. */
  readonly bottoms: readonly bigint[];
}

export type GuessesOf = (question: Question) => readonly Guess[];

export const exactGuesses: GuessesOf = (question) => settingOf(question).guesses(question);

/**
 * No less than what is earned by guessing, and quick: a long order counts as one that everybody gets right. Where even so
 * hardly anybody passes, all its orders need not be gone through.
 */
export const generousGuesses: GuessesOf = (question) =>
  question.kind === "arrange" && question.steps.length > 6
    ? [{ credit: whole, failsCritical: false, ways: 1n }]
    : exactGuesses(question);

function guessesFor(question: Question, guessesOf: GuessesOf): Guessed {
  const max = ratioOf(question.points);
  const guesses = guessesOf(question).map((guess) => ({
    points: times(guess.credit, max),
    failed: failsQuiz(question, guess),
    ways: guess.ways,
  }));
  return {
    guesses,
    max,
    ways: guesses.reduce((sum, { ways }) => sum + ways, 0n),
    bottoms: [max.bottom, ...guesses.map(({ points }) => points.bottom)],
  };
}

const failsQuiz = (question: Question, { credit, failsCritical }: Guess): boolean =>
  failsCritical || (question.critical && compare(credit, whole) !== 0);

/** `common` is what the ways of each question of the pool are brought to, so that each paper weighs the same. */
function inUnits(
  { guesses, max, ways }: Guessed,
  { unit, span, common }: { unit: bigint; span: bigint; common: bigint },
): Counted {
  const units = ({ top, bottom }: Ratio): bigint => (top * unit) / bottom;
  return {
    guesses: guesses.map((guess) => ({
      key: units(guess.points) * span + units(max),
      failed: guess.failed,
      ways: (guess.ways * common) / ways,
    })),
  };
}

interface Measures {
  /** In how many ways all sums come out. */
  readonly ways: bigint;
  readonly unit: bigint;
  readonly span: bigint;
  readonly pass: Ratio;
}

function summary(sums: Sums, { ways: all, unit, span, pass }: Measures): Omit<Chance, "papers"> {
  const totals = new Map<bigint, bigint>();
  let [passing, weighted, max] = [0n, 0n, 0n];
  for (const [key, { sound, failed }] of sums) {
    const [earned, most] = [key / span, key % span];
    const ways = sound + failed;
    totals.set(earned, (totals.get(earned) ?? 0n) + ways);
    weighted += earned * ways;
    if (most > max) max = most;
    if (earned * pass.bottom >= most * pass.top) passing += sound;
  }
  const ascending = [...totals].sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    pass: toNumber({ top: passing, bottom: all }),
    mean: toNumber({ top: weighted, bottom: all * unit }),
    max: toNumber({ top: max, bottom: unit }),
    totals: ascending.map(([total, ways]) => ({
      score: toNumber({ top: total, bottom: unit }),
      chance: toNumber({ top: ways, bottom: all }),
    })),
  };
}

function leastCommonMultiple(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b];
  while (smaller > 0n) [larger, smaller] = [smaller, larger % smaller];
  return (a / larger) * b;
}
