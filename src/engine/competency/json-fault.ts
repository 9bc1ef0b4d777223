/** What `JSON.parse` passes over in a text: names given twice, depth, `__proto__`, lone surrogates, endless numbers. */
import { t } from "../words.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";

export const deepest = 64;

/** Where the reader is: the names so far of an object, or an array. */
type Open = Set<string> | "array";

/**
 * The first fault; undefined where there is none. Of a text that is no JSON it may find one or none: whether a text is JSON
 * is for `JSON.parse` to say, once this has found it shallow enough to be handed over. O(length), without recursion.
 */
export function jsonFault(text: string): RecordProblem | undefined {
  if (/\p{Surrogate}/u.test(text)) return fault("not-json", brokenLetter, 1);
  const open: Open[] = [];
  let mayBeName = false;
  for (const { piece, at } of piecesOf(text)) {
    const found = mayBeName && piece[0] === '"' ? faultOfName(piece, open.at(-1)) : faultOfValue(piece, open);
    if (found !== undefined) return fault(...found, lineOf(text, at));
    mayBeName = opensName(piece, open);
  }
  return undefined;
}

/** Strings, numbers, and the punctuation that matters, in order; between them lies what does not matter here. */
function* piecesOf(text: string): Generator<{ readonly piece: string; readonly at: number }> {
  const begin = /["{}[\],]|-?\d[\d.eE+-]*/g;
  for (let found = begin.exec(text); found !== null; found = begin.exec(text)) {
    if (found[0] === '"') begin.lastIndex = endOfString(text, found.index + 1);
    yield { piece: text.slice(found.index, begin.lastIndex), at: found.index };
  }
}

/** Behind the closing mark. By hand, because a pattern needs room on the stack for each escape. */
function endOfString(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    if (text[at] === '"') return at + 1;
    if (text[at] === "\\") at++;
  }
  return text.length;
}

type Fault = readonly [code: RecordCode, words: string];

const brokenLetter = t`half a letter (a lone surrogate), which has no place in UTF-8`;

function faultOfName(piece: string, names: Open | undefined): Fault | undefined {
  const name = textOf(piece);
  if (name === undefined || !(names instanceof Set)) return undefined;
  if (isBroken(piece, name)) return ["not-json", brokenLetter];
  if (name === "__proto__") return ["not-json", t`the name __proto__, which no record has`];
  if (names.has(name)) return ["not-json", t`the name "${name.slice(0, 60)}" twice in one object`];
  names.add(name);
  return undefined;
}

/** Opens and closes what `piece` opens and closes. */
function faultOfValue(piece: string, open: Open[]): Fault | undefined {
  const first = piece[0]!;
  if (first === "{" || first === "[") {
    open.push(first === "{" ? new Set() : "array");
    return open.length > deepest ? ["too-large", t`brackets nested more than ${deepest} deep`] : undefined;
  }
  if (first === "}" || first === "]") open.pop();
  else if (first === '"')
    return isBroken(piece, textOf(piece) ?? "") ? ["not-json", brokenLetter] : undefined;
  else if (first === "-" || (first >= "0" && first <= "9"))
    return Math.abs(Number(piece)) === Number.POSITIVE_INFINITY
      ? ["not-json", t`a number too great to be read: ${piece.slice(0, 30)}`]
      : undefined;
  return undefined;
}

const opensName = (piece: string, open: readonly Open[]): boolean =>
  piece === "{" || (piece === "," && open.at(-1) !== "array");

/** Undefined where the piece is no JSON string. */
function textOf(piece: string): string | undefined {
  if (!piece.includes("\\")) return piece.slice(1, -1);
  try {
    return JSON.parse(piece) as string;
  } catch {
    return undefined;
  }
}

/** Only an escape can hide half a letter: those written out were looked for before. */
const isBroken = (piece: string, text: string): boolean =>
  /\\u[dD][89a-fA-F]/.test(piece) && /\p{Surrogate}/u.test(text);

const lineOf = (text: string, at: number): number => text.slice(0, at).split("\n").length;

const fault = (code: RecordCode, words: string, line: number): RecordProblem => ({
  code,
  message: t`Line ${line} has ${words}. Nothing of this file is read, because another program might read it otherwise. Ask whoever made it for the file as it was.`,
});
