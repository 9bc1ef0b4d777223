/** Answers as someone writes them down, or as another program gives them: for `score` and `items`. */
import { readFileSync, statSync } from "node:fs";
import { drawPaper, paperLength } from "../engine/quiz/paper.ts";
import type { Quiz } from "../engine/quiz/quiz.ts";
import type { Answers } from "../engine/quiz/score.ts";
import { longestSitting } from "../engine/quiz/sitting-file.ts";
import { BadInput } from "./command.ts";

/** The text of a file of answers. Throws a BadInput where it can't be read or is larger than 1 MiB. */
export function readAnswersText(file: string): string {
  const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0;
  if (size > longestSitting)
    throw new BadInput(`${file}: found ${size} bytes; expected ${longestSitting} at most, as a sitting has.`);
  try {
    return readFileSync(file, "utf8");
  } catch (cause) {
    throw new BadInput(`${file}: can't be read (${cause instanceof Error ? cause.message : String(cause)})`);
  }
}

/** Reads `{"answers": {...}}`, the map alone, or a list of pairs as a page keeps them. Throws a BadInput for anything else. */
export function answersIn(value: unknown, file: string): Answers {
  const given = givenIn(value, file);
  return new Map(Array.isArray(given) ? given : Object.entries(given));
}

/** The same where each is only asked for by its question: without a map of them, since `items` reads millions. */
export function answersByName(value: unknown, file: string): Pick<Answers, "get"> {
  const given = givenIn(value, file);
  if (Array.isArray(given)) return new Map(given);
  return { get: (name) => (Object.hasOwn(given, name) ? given[name] : undefined) };
}

function givenIn(value: unknown, file: string): [string, unknown][] | Record<string, unknown> {
  const inner = isMap(value) && "answers" in value ? (value as { answers: unknown }).answers : value;
  if (isMap(inner) || (Array.isArray(inner) && inner.every(isEntry)))
    return inner as [string, unknown][] | Record<string, unknown>;
  throw new BadInput(`${file}: expected {"answers": {"<question>": <answer>}}`);
}

/**
 * The paper that the answers belong to, drawn by their "seed" and "preferred". Throws a BadInput where a quiz draws one and
 * no seed says which: against the whole pool the same answers would earn something else.
 */
export function paperIn(value: unknown, quiz: Quiz, file: string): Quiz {
  const { answers, seed, preferred = [] } = (isMap(value) ? value : {}) as Record<string, unknown>;
  // Where the file is nothing but answers, "seed" is the name of a question.
  if (answers !== undefined && typeof seed === "string" && isTexts(preferred))
    return drawPaper(quiz, seed, new Set(preferred));
  if (quiz.paper === undefined) return quiz;
  throw new BadInput(
    `${file}: this quiz draws ${paperLength(quiz)} of ${quiz.questions.length} questions; expected "seed": "<text>" beside "answers", which says which.`,
  );
}

const isMap = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isEntry = (entry: unknown): entry is [string, unknown] =>
  Array.isArray(entry) && entry.length === 2 && typeof entry[0] === "string";
const isTexts = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((one) => typeof one === "string");
