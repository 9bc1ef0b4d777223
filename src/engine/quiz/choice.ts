/** What the kinds with options share. */

import { t } from "../words.ts";
import { bad, good, type Result } from "../workshop/result.ts";
import { type Guess, tally } from "./guess.ts";
import { type AnswerCode, jsonKind, type QuestionProblem, questionProblem, type Remark } from "./kind.ts";
import { none, whole } from "./ratio.ts";

export interface Option {
  readonly text: string;
  readonly right: boolean;
  /** Why it is right or wrong. */
  readonly why: string | undefined;
}

/** The place of an option, given as that (a number, from 0) or as its text, case and space aside. */
export function readOption(options: readonly Option[], given: unknown): Result<number, AnswerCode> {
  const expected = t`an option, by its text or by a number from 0 to ${options.length - 1}`;
  if (typeof given !== "number" && typeof given !== "string") {
    return bad("wrong-kind", jsonKind(given), expected);
  }
  const place = typeof given === "number" ? given : options.map(folded).indexOf(fold(given));
  return options[place] ? good(place) : bad("no-such-option", String(given), expected);
}

/** Every option that was chosen or should have been, in the written order. */
export function optionRemarks(options: readonly Option[], chosen: ReadonlySet<number>): Remark[] {
  return options.flatMap(({ text, right, why = "" }, place) => {
    const verdict = chosen.has(place) ? (right ? "right" : "wrong") : "missed";
    return verdict === "missed" && !right ? [] : [{ verdict, about: [text], because: why }];
  });
}

/** What can be wrong with options of any kind of choice. */
export function optionProblems(options: readonly Option[]): QuestionProblem[] {
  const problems = [...equalOptions(options), ...unexplained(options)];
  if (options.length < 2) {
    problems.unshift(questionProblem("too-few-options", `${options.length}`, "two options or more"));
  }
  if (!options.some(({ right }) => right)) {
    problems.unshift(questionProblem("no-right-option", "no right option", "an option marked right: true"));
  }
  return problems;
}

/** Where one is taken: any of them, equally likely. */
export const optionGuesses = (options: readonly Option[]): Guess[] =>
  tally(options.map(({ right }) => ({ credit: right ? whole : none, failsCritical: false, ways: 1n })));

function equalOptions(options: readonly Option[]): QuestionProblem[] {
  const texts = options.map(folded);
  return texts.flatMap((text, place) => {
    const earlier = texts.indexOf(text);
    const found = t`"${options[place]!.text}" twice`;
    return earlier === place
      ? []
      : [questionProblem("equal-options", found, "options that differ", [earlier, place])];
  });
}

function unexplained(options: readonly Option[]): QuestionProblem[] {
  return options.flatMap(({ text, right, why }, place) =>
    right || why?.trim()
      ? []
      : [
          questionProblem("wrong-option-without-why", `"${text}"`, "a why: that says what is wrong with it", [
            place,
          ]),
        ],
  );
}

function folded({ text }: Option): string {
  return fold(text);
}

function fold(text: string): string {
  return text.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim();
}
