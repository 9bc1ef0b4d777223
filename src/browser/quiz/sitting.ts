/** One sitting of a quiz, as it is kept in the browser. */
import type { PastSitting } from "../../engine/quiz/paper.ts";
import type { Answers } from "../../engine/quiz/score.ts";
import { fieldsOf } from "../page/store.ts";

export interface Sitting {
  /** From 1. */
  readonly number: number;
  /** Draws the paper, and the order in which options and steps are shown. */
  readonly seed: string;
  /** Questions that the paper takes first. */
  readonly preferred: readonly string[];
  readonly answers: Answers;
  /** Questions whose answers were checked: they are closed for this sitting. */
  readonly checked: ReadonlySet<string>;
  /** When it was over, in milliseconds since 1970; undefined where it is not. */
  readonly ended: number | undefined;
  /** What came of those before, in order. */
  readonly earlier: readonly PastSitting[];
}

/** No more sittings than these are looked back on. */
const mostEarlier = 20;

export function newSitting(
  { number, seed, preferred }: Pick<Sitting, "number" | "seed" | "preferred">,
  earlier: readonly PastSitting[] = [],
): Sitting {
  return {
    number,
    seed,
    preferred,
    answers: new Map(),
    checked: new Set(),
    ended: undefined,
    earlier: earlier.slice(-mostEarlier),
  };
}

/** As JSON; `of` tells the quiz apart from what it was before it was changed. */
export function keepSitting({ answers, checked, ...sitting }: Sitting, of: string): unknown {
  return { of, ...sitting, answers: [...answers], checked: [...checked] };
}

/** Reads a kept sitting; undefined where it is none, or of another quiz. What the answers hold is read by the engine. */
export function readSitting(kept: unknown, of: string): Sitting | undefined {
  const { of: was, number, seed, preferred, answers, checked, ended, earlier } = fieldsOf(kept);
  if (was !== of || typeof number !== "number" || typeof seed !== "string") return undefined;
  if (!Array.isArray(answers) || !answers.every(isAnswer) || !isTexts(checked)) return undefined;
  if (!isTexts(preferred) || !Array.isArray(earlier) || !earlier.every(isPast)) return undefined;
  return {
    number,
    seed,
    preferred,
    answers: new Map(answers),
    checked: new Set(checked),
    ended: typeof ended === "number" ? ended : undefined,
    earlier: earlier.map(({ asked, missed }) => ({ asked, missed })),
  };
}

const isTexts = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((one) => typeof one === "string");

const isAnswer = (pair: unknown): pair is [string, unknown] =>
  Array.isArray(pair) && pair.length === 2 && typeof pair[0] === "string";

function isPast(past: unknown): past is PastSitting {
  const { asked, missed } = fieldsOf(past);
  return isTexts(asked) && isTexts(missed);
}
