/** One sitting of a quiz, as it is kept in the browser. */
import type { Answers } from "../../engine/quiz/score.ts";
import { fieldsOf } from "../page/store.ts";

export interface Sitting {
  /** From 1. */
  readonly number: number;
  /** Draws the order in which options and steps are shown. */
  readonly seed: string;
  readonly answers: Answers;
  /** Questions whose answers were checked: they are closed for this sitting. */
  readonly checked: ReadonlySet<string>;
}

export function newSitting(number: number, seed: string): Sitting {
  return { number, seed, answers: new Map(), checked: new Set() };
}

/** As JSON; `of` tells the quiz apart from what it was before it was changed. */
export function keepSitting({ number, seed, answers, checked }: Sitting, of: string): unknown {
  return { of, number, seed, answers: [...answers], checked: [...checked] };
}

/** Reads a kept sitting; undefined where it is none, or of another quiz. What the answers hold is read by the engine. */
export function readSitting(kept: unknown, of: string): Sitting | undefined {
  const { of: was, number, seed, answers, checked } = fieldsOf(kept);
  if (was !== of || typeof number !== "number" || typeof seed !== "string") return undefined;
  if (!Array.isArray(answers) || !answers.every(isAnswer) || !Array.isArray(checked)) return undefined;
  return {
    number,
    seed,
    answers: new Map(answers),
    checked: new Set(checked.filter((id) => typeof id === "string")),
  };
}

const isAnswer = (pair: unknown): pair is [string, unknown] =>
  Array.isArray(pair) && pair.length === 2 && typeof pair[0] === "string";
