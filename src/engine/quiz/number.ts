import { t } from "../words.ts";
import { formatQuantity } from "../workshop/format-quantity.ts";
import { convert, type Quantity, type QuantityCode } from "../workshop/quantity.ts";
import type { Problem } from "../workshop/result.ts";
import { withArticle } from "../workshop/units.ts";
import {
  type Asked,
  answered,
  isBlank,
  jsonKind,
  type Kind,
  type QuestionProblem,
  questionProblem,
  type Setting,
  unreadable,
} from "./kind.ts";
import { none, whole } from "./ratio.ts";
import { formatWithTolerance, readInUnitOf, slack, type Tolerance } from "./tolerance.ts";

export interface NumberQuestion extends Asked {
  readonly kind: "number";
  readonly answer: Quantity;
  readonly tolerance: Tolerance | undefined;
}

/**
 * A quantity. In any unit of the dimension asked for, it earns all within the tolerance, ends included, and else
 * nothing; so does one of another dimension. The answer is text, or a JSON number; a bare number is one in the unit of
 * the right answer, which the page shows beside the field.
 */
export const number: Kind<NumberQuestion, Quantity> = {
  read({ answer }, given) {
    if (isBlank(given)) return { state: "blank" };
    if (typeof given !== "string" && typeof given !== "number") {
      return unreadable("wrong-kind", jsonKind(given), t`a quantity, as text or as a number`);
    }
    const read = readInUnitOf(answer, String(given));
    return read.ok
      ? answered(read.value)
      : { state: "unreadable", problem: told(read.problem, answer, given) };
  },
  judge(question, answer) {
    return { credit: isRight(question, answer) ? whole : none, failsCritical: false };
  },
  remarks(question, given) {
    const expected = formatWithTolerance(question.answer, question.tolerance);
    if (given === undefined) return [{ verdict: "missed", about: [expected], because: "" }];
    const about = [formatQuantity(given), expected];
    return isRight(question, given)
      ? [{ verdict: "right", about, because: "" }]
      : [{ verdict: "wrong", about, because: whyWrong(question, given) }];
  },
  shown: () => [],
};

/** Where no unit belongs to the answer, none is proposed: "3 screws" is told to be 3 without its word. */
function told(problem: Problem<QuantityCode>, { unit }: Quantity, given: string | number) {
  if (unit !== "" || !wordy.has(problem.code)) return problem;
  const found = String(given).slice(0, longestQuote);
  return {
    ...problem,
    found,
    expected: t`the number alone, in figures, without a word or a unit`,
    nearest: undefined,
  };
}

const wordy: ReadonlySet<QuantityCode> = new Set(["number", "unknown-unit", "ambiguous-unit"] as const);
const longestQuote = 60;

export const numberSetting: Setting<NumberQuestion> = {
  problems: problemsOf,
  /** A figure that nobody knows is not guessed: there are too many of them. */
  guesses: () => [{ credit: none, failsCritical: false, ways: 1n }],
};

/**
 * Rounding of conversions (some 1e-15 of the size) must not make a right answer wrong at the end of the tolerance:
 * 0.9 − 0.85 is a little more than 0.05 to the machine. Nobody writes a quantity to nine figures.
 */
const rounding = 1e-9;

function isRight({ answer, tolerance }: NumberQuestion, given: Quantity): boolean {
  if (given.dimension !== answer.dimension) return false;
  const spare = rounding * Math.max(Math.abs(answer.base), Math.abs(given.base));
  return Math.abs(given.base - answer.base) <= slack(answer, tolerance) + spare;
}

function whyWrong({ answer }: NumberQuestion, given: Quantity): string {
  if (given.dimension !== answer.dimension)
    return t`the answer is ${withArticle(answer.dimension)}, not ${withArticle(given.dimension)}`;
  const inUnit = convert(given, answer.unit);
  const words = inUnit.ok && given.unit !== answer.unit ? t`${formatQuantity(inUnit.value)} is ` : "";
  return `${words}${given.base < answer.base ? t`too low` : t`too high`}`;
}

/** Only a bare whole number, a count, can be met exactly; whatever is measured or converted is rounded. */
function problemsOf({ answer, tolerance }: NumberQuestion): QuestionProblem[] {
  const words = formatWithTolerance(answer, tolerance);
  const isCount = answer.unit === "" && Number.isInteger(answer.amount);
  if (tolerance === undefined) {
    return isCount
      ? []
      : [questionProblem("tolerance-missing", words, "a tolerance: 5 %, or a size with its unit")];
  }
  const size = slack(answer, tolerance);
  if (size === 0 && !isCount) return [questionProblem("tolerance-zero", words, "a tolerance greater than 0")];
  if (answer.dimension !== "temperature" && answer.base !== 0 && size >= Math.abs(answer.base)) {
    return [questionProblem("tolerance-too-wide", words, "a tolerance that does not take in 0")];
  }
  return [];
}
