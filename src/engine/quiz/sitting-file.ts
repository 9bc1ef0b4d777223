/** A sitting that was handed in as a file, to be marked by someone who has the whole quiz. */
import { bad, good, type Result } from "../workshop/result.ts";
import { isBlank, jsonKind } from "./kind.ts";
import { kindOf } from "./kinds.ts";
import { drawPaper } from "./paper.ts";
import type { Quiz } from "./quiz.ts";
import { quizDigest } from "./quiz-digest.ts";
import { type Answers, type QuizScore, scoreQuiz } from "./score.ts";

export interface SittingFile {
  readonly module: string;
  readonly revision: number;
  /** Of the quiz that the page asked (`quizDigest`). */
  readonly digest: string;
  readonly seed: string;
  /** Ids that this sitting preferred when it was drawn (`drawPaper`). */
  readonly preferred: readonly string[];
  readonly answers: Answers;
}

export type SittingCode =
  | "too-large"
  | "not-json"
  | "not-a-sitting"
  | "other-module"
  | "other-revision"
  | "other-quiz";

/** Far more than any sitting needs; the rest costs no reading. */
export const longestSitting = 1024 * 1024;

/** As text of a JSON file, the same for the same sitting. */
export function writeSitting({ answers, ...sitting }: SittingFile): string {
  const { module, revision, digest, seed, preferred } = sitting;
  const given = [...answers].filter(([, answer]) => answer !== undefined);
  const fields = { sitting: 1, module, revision, digest, seed, preferred, answers: given };
  return `${JSON.stringify(fields, null, 2)}\n`;
}

/** What a sitting says; anything else in its place, such as a score, would be a claim that nobody has worked out. */
const fieldNames: ReadonlySet<string> = new Set([
  "sitting",
  "module",
  "revision",
  "digest",
  "seed",
  "preferred",
  "answers",
]);

/** Reads what `writeSitting` wrote, from untrusted text. Nothing is said yet of whether its answers make sense. */
export function readSittingFile(text: string): Result<SittingFile, SittingCode> {
  if (text.length > longestSitting)
    return bad("too-large", `${text.length} characters`, `at most ${longestSitting}`);
  const json = parsed(text);
  if (json === undefined) return bad("not-json", excerpt(text), "a file that a quiz page handed out");
  if (typeof json !== "object" || json === null || Array.isArray(json))
    return bad("not-a-sitting", jsonKind(json), "an object with sitting: 1");
  return fromFields(new Map<string, unknown>(Object.entries(json)));
}

/** Enough of a text to know it by. */
const excerpt = (text: string): string =>
  text.trim() === "" ? "nothing" : `"${text.trim().slice(0, 40)}${text.trim().length > 40 ? "…" : ""}"`;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function fromFields(fields: ReadonlyMap<string, unknown>): Result<SittingFile, SittingCode> {
  const [module, revision, seed] = [fields.get("module"), fields.get("revision"), fields.get("seed")];
  const [preferred, answers, digest] = [fields.get("preferred"), fields.get("answers"), fields.get("digest")];
  const wrong = (field: string, expected: string) =>
    bad("not-a-sitting" as const, `${field}: ${jsonKind(fields.get(field))}`, expected);
  if (fields.get("sitting") !== 1) return wrong("sitting", "sitting: 1");
  const stranger = [...fields.keys()].find((name) => !fieldNames.has(name));
  if (stranger !== undefined)
    return bad("not-a-sitting", `a field ${stranger}`, "answers and no score: they are marked anew");
  if (typeof module !== "string") return wrong("module", "the module's id");
  if (typeof revision !== "number" || !Number.isInteger(revision)) return wrong("revision", "a whole number");
  if (typeof digest !== "string" || digest.length > 200) return wrong("digest", "the quiz's digest, as text");
  if (typeof seed !== "string" || seed.length > 200) return wrong("seed", "the seed of the paper, as text");
  if (!isTexts(preferred)) return wrong("preferred", "a list of ids");
  if (!Array.isArray(answers) || !answers.every(isPair)) return wrong("answers", "a list of [id, answer]");
  const read = new Map(answers);
  if (read.size < answers.length)
    return bad("not-a-sitting", "two answers to a question", "each question once");
  return good({ module, revision, digest, seed, preferred, answers: read });
}

const isTexts = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.length <= 500 && value.every((one) => typeof one === "string");

const isPair = (pair: unknown): pair is [string, unknown] =>
  Array.isArray(pair) && pair.length === 2 && typeof pair[0] === "string";

/** Of what a quiz belongs to. */
export interface OfModule {
  readonly module: string;
  readonly revision: number;
}

/** The module, the revision or the wording of a sitting's quiz is another than that of the quiz in hand. */
function otherQuiz(quiz: Quiz, of: OfModule, sitting: SittingFile): Result<never, SittingCode> | undefined {
  if (sitting.module !== of.module)
    return bad("other-module", `a sitting on ${sitting.module}`, `one on ${of.module}`);
  if (sitting.revision !== of.revision)
    return bad(
      "other-revision",
      `a sitting on revision ${sitting.revision}`,
      `one on revision ${of.revision}`,
    );
  const digest = quizDigest(quiz);
  if (sitting.digest !== digest)
    return bad("other-quiz", `a sitting on the quiz ${sitting.digest}`, `one on the quiz ${digest}`);
  return undefined;
}

export interface MarkedSitting {
  readonly paper: Quiz;
  readonly score: QuizScore;
  /** Ids of the paper without an answer: they earn nothing. */
  readonly unanswered: readonly string[];
}

/**
 * Draws the sitting's paper again and marks it. A sitting of another module, revision or wording is refused, since its
 * questions were others; answers to questions that are not on the paper are named in `score.unknown` and earn nothing.
 */
export function markSitting(
  quiz: Quiz,
  of: OfModule,
  sitting: SittingFile,
): Result<MarkedSitting, SittingCode> {
  const refusal = otherQuiz(quiz, of, sitting);
  if (refusal !== undefined) return refusal;
  const paper = drawPaper(quiz, sitting.seed, new Set(sitting.preferred));
  const unanswered = paper.questions.filter((question) => {
    const given = sitting.answers.get(question.id);
    return isBlank(given) || kindOf(question).read(question, given).state === "blank";
  });
  const score = scoreQuiz(paper, sitting.answers);
  return good({ paper, score, unanswered: unanswered.map(({ id }) => id) });
}
