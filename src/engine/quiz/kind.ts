/** What every question has, and what a kind of question has to say about it. */

import { t } from "../words.ts";
import type { QuantityCode } from "../workshop/quantity.ts";
import type { Problem } from "../workshop/result.ts";
import type { Guess } from "./guess.ts";
import type { Ratio } from "./ratio.ts";

/** What questions of every kind have. All of a question is plain data, so that a page can carry it as JSON. */
export interface Asked {
  readonly id: string;
  readonly ask: string;
  /** Shown after the answer. */
  readonly why: string;
  /** Relative link to what to read again. */
  readonly see: string;
  readonly objective: string | undefined;
  /** It must be right for the quiz to be passed. */
  readonly critical: boolean;
  readonly points: number;
  /** Its options are shown as written. */
  readonly keepOrder?: boolean | undefined;
}

export type AnswerCode = QuantityCode | "wrong-kind" | "no-such-option" | "too-many" | "repeated-step";

/** What was given to a question. Blank and unreadable earn nothing. */
export type Given<Answer> =
  | { readonly state: "answered"; readonly answer: Answer }
  | { readonly state: "blank" }
  | { readonly state: "unreadable"; readonly problem: Problem<AnswerCode> };

export interface Judgement {
  /** Part of the points earned, from 0 to 1. */
  readonly credit: Ratio;
  /** The answer holds a mistake that ruins or hurts, so the question counts as a critical one got wrong. */
  readonly failsCritical: boolean;
}

/** One thing to say about an answer, in the words of the content; a page puts it into sentences. */
export interface Remark {
  /** "right": given, and right; "wrong": given, and not right; "missed": right, and not given. */
  readonly verdict: "right" | "wrong" | "missed";
  /** An option, a quantity, a step; two steps where it is their order; an item and where it belongs. */
  readonly about: readonly string[];
  /** The reason, or "". */
  readonly because: string;
  /** Where there may be several reasons: each by itself. */
  readonly reasons?: readonly string[];
}

export type QuestionCode =
  | "too-few-options"
  | "no-right-option"
  | "several-right-options"
  | "no-wrong-option"
  | "equal-options"
  | "wrong-option-without-why"
  | "tolerance-missing"
  | "tolerance-zero"
  | "tolerance-too-wide"
  | "too-few-steps"
  | "too-many-steps"
  | "repeated-step"
  | "cannot-be-wrong"
  | "too-few-pairs"
  | "too-many-pairs"
  | "equal-items"
  | "equal-choices"
  | "equal-others"
  | "too-few-groups"
  | "too-few-items"
  | "equal-groups"
  | "empty-group"
  | "no-accepted-answer"
  | "equal-answers"
  | "slips-too-wide"
  | "mistake-accepted"
  | "too-few-places"
  | "no-right-place"
  | "no-wrong-place"
  | "equal-places"
  | "wrong-place-without-why"
  | "place-outside"
  | "places-overlap"
  | "too-few-cases"
  | "equal-cases"
  | "points-out-of-range";

/** A mistake of the author. `at` points at the options or steps meant, from 0; empty where it is the whole question. */
export interface QuestionProblem extends Problem<QuestionCode> {
  readonly at: readonly number[];
}

/** A row of the table of kinds. An answer always speaks of the written order, never of the order shown. */
export interface Kind<Question extends Asked, Answer> {
  /** Reads an answer from untrusted JSON. */
  read(question: Question, given: unknown): Given<Answer>;
  judge(question: Question, answer: Answer): Judgement;
  /** What to say about an answer, or about none. */
  remarks(question: Question, answer: Answer | undefined): readonly Remark[];
  /** The order in which its options or steps are shown, as places in the written order; empty where it has none. */
  shown(question: Question, seed: string): readonly number[];
}

/**
 * A row of the table of what only those need to know who set questions. It is apart from the row above so that a page on
 * which a quiz is sat does not load it.
 */
export interface Setting<Question extends Asked> {
  problems(question: Question): readonly QuestionProblem[];
  /** What someone earns who guesses, each answer that the page takes being equally likely. */
  guesses(question: Question): readonly Guess[];
}

export function answered<Answer>(answer: Answer): Given<Answer> {
  return { state: "answered", answer };
}

export function unreadable(code: AnswerCode, found: string, expected: string): Given<never> {
  return { state: "unreadable", problem: { code, found, expected, nearest: undefined } };
}

/** Of any kind: nothing, no text, an empty list. */
export function isBlank(given: unknown): boolean {
  return (
    given === undefined ||
    given === null ||
    (typeof given === "string" && given.trim() === "") ||
    (Array.isArray(given) && given.length === 0)
  );
}

export function questionProblem(
  code: QuestionCode,
  found: string,
  expected: string,
  at: readonly number[] = [],
): QuestionProblem {
  return { code, found, expected, nearest: undefined, at };
}

/** More entries than any question has options or steps, so that hostile answers cost nothing. */
export const longestList = 500;

/** What kind of JSON was found where another was expected. */
export function jsonKind(given: unknown): string {
  if (given === null) return "null";
  return Array.isArray(given) ? t`a list` : t`a ${typeof given}`.replace("a object", "an object");
}
