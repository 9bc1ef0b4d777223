import { t } from "../words.ts";
import { editDistance } from "../workshop/edit-distance.ts";
import { fold, repeats } from "./fold.ts";
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

export interface TextQuestion extends Asked {
  readonly kind: "text";
  /** Any of these is right; the first is the one that is told. */
  readonly answers: readonly string[];
  /** How many letters may be wrong, missing or too many: 0 where only the exact word is right. */
  readonly slips: number;
  /** What people write instead, never right however near it is. */
  readonly mistakes: readonly { readonly text: string; readonly why: string }[];
}

/** Longer than any short answer, so that hostile text costs nothing. */
const longest = 200;

/**
 * A word or a few. Case, accents and runs of spaces do not matter (`fold`). It earns all where it is one of the accepted
 * answers, or within `slips` edits (Levenshtein) of one and not one of the mistakes; else nothing.
 */
export const text: Kind<TextQuestion, string> = {
  read(_question, given) {
    if (isBlank(given)) return { state: "blank" };
    if (typeof given !== "string" && typeof given !== "number") {
      return unreadable("wrong-kind", jsonKind(given), t`a word or a few, as text`);
    }
    const written = String(given);
    if (written.length > longest)
      return unreadable("too-long", t`${written.length} characters`, t`at most ${longest}`);
    return answered(written.replace(/\s+/g, " ").trim());
  },
  judge(question, answer) {
    return { credit: isRight(question, answer) ? whole : none, failsCritical: false };
  },
  remarks(question, given) {
    const expected = question.answers[0] ?? "";
    if (given === undefined) return [{ verdict: "missed", about: [expected], because: "" }];
    if (!isRight(question, given))
      return [{ verdict: "wrong", about: [given, expected], because: mistakeIn(question, given)?.why ?? "" }];
    const because = isExact(question, given) ? "" : t`taken with its slip of the pen`;
    return [{ verdict: "right", about: [given, nearestOf(question, given)], because }];
  },
  shown: () => [],
};

export const textSetting: Setting<TextQuestion> = {
  problems: problemsOf,
  /** A word that nobody knows is not guessed: there are too many of them. */
  guesses: () => [{ credit: none, failsCritical: false, ways: 1n }],
};

const isExact = ({ answers }: TextQuestion, given: string): boolean =>
  answers.some((answer) => fold(answer) === fold(given));

const mistakeIn = ({ mistakes }: TextQuestion, given: string) =>
  mistakes.find((mistake) => fold(mistake.text) === fold(given));

const distance = (a: string, b: string): number => editDistance(fold(a), fold(b));

function isRight(question: TextQuestion, given: string): boolean {
  if (isExact(question, given)) return true;
  if (question.slips === 0 || mistakeIn(question, given) !== undefined) return false;
  return question.answers.some((answer) => distance(answer, given) <= question.slips);
}

function nearestOf({ answers }: TextQuestion, given: string): string {
  const byDistance = answers.map((answer) => ({ answer, edits: distance(answer, given) }));
  return byDistance.reduce((best, one) => (one.edits < best.edits ? one : best)).answer;
}

/** One slip in four letters: with more, other words of the trade begin to fit ("oil" and "coil"). Our own measure. */
const lettersPerSlip = 4;

function problemsOf({ answers, slips, mistakes }: TextQuestion): QuestionProblem[] {
  const problems: QuestionProblem[] = [];
  if (answers.length === 0)
    problems.push(questionProblem("no-accepted-answer", "no answer", "one or more that are right"));
  for (const { first, place } of repeats(answers)) {
    const found = t`"${answers[place]!}" twice, as case, accents and spaces do not count`;
    problems.push(questionProblem("equal-answers", found, "answers that differ", [first, place]));
  }
  const shortest = Math.min(...answers.map((answer) => fold(answer).length));
  if (answers.length > 0 && slips * lettersPerSlip > shortest) {
    const expected = t`a slip in every ${lettersPerSlip} letters of the shortest answer at most, which has ${shortest}`;
    problems.push(questionProblem("slips-too-wide", `${slips} slips`, expected));
  }
  for (const [place, mistake] of mistakes.entries()) {
    if (answers.some((answer) => fold(answer) === fold(mistake.text))) {
      const found = t`"${mistake.text}" both right and a mistake`;
      problems.push(questionProblem("mistake-accepted", found, "one or the other", [place]));
    }
  }
  return problems;
}
