/** Which fields an event of each kind has, and what each must be. */
import { t } from "../words.ts";
import { isDigest } from "./digest.ts";
import type { EventKind } from "./event.ts";
import { isList, isObject } from "./fields.ts";
import { readInstant, writeInstant } from "./instant.ts";
import type { Json } from "./json.ts";

type Value = Json | undefined;

/** What a field must be: a test, and the words for it. */
export interface Field {
  readonly expected: string;
  accepts(value: Value): boolean;
}

const field = (expected: string, accepts: (value: Value) => boolean): Field => ({ expected, accepts });

const longestText = 500;
/** Far more than any quiz has questions. */
const mostAnswers = 500;
/** A module has at most 500 steps; a run may try each of them often. */
const mostTries = 10_000;

const isText = (value: Value): value is string => typeof value === "string" && value.length <= longestText;
const isNumber = (value: Value): boolean => typeof value === "number" && value >= 0;
const isFlag = (value: Value): boolean => typeof value === "boolean";

const text = field(t`a text of at most ${longestText} letters`, isText);
const digest = field(
  t`a digest (uEi… of 46 letters)`,
  (value) => typeof value === "string" && isDigest(value),
);
const texts = (most: number): Field =>
  field(
    t`a list of at most ${most} texts`,
    (value) => isList(value) && value.length <= most && value.every(isText),
  );
const number = field(
  t`a whole number from 1`,
  (value) => Number.isSafeInteger(value) && (value as number) >= 1,
);
const object = field(t`an object`, isObject);
const instant = field(
  t`a time in UTC to the millisecond, like 2026-11-27T19:30:00.000Z`,
  (value) => typeof value === "string" && isWrittenInstant(value),
);

/** True of text in exactly the form of `writeInstant`, in which earlier times sort before later ones. */
export function isWrittenInstant(text: string): boolean {
  const instant = readInstant(text);
  return instant !== undefined && writeInstant(instant) === text;
}

const isAnswer = (pair: Json): pair is readonly [string, Json] =>
  isList(pair) && pair.length === 2 && isText(pair[0]);
const answers = field(
  t`a list of at most ${mostAnswers} pairs of question and answer, each question once`,
  (value) =>
    isList(value) &&
    value.length <= mostAnswers &&
    value.every(isAnswer) &&
    new Set(value.map(([id]) => id)).size === value.length,
);

/** An object with exactly these fields. */
function claim(fields: Readonly<Record<string, (value: Value) => boolean>>): (value: Value) => boolean {
  const names = Object.keys(fields);
  return (value) =>
    isObject(value) &&
    Object.keys(value).length === names.length &&
    names.every((name) => Object.hasOwn(value, name) && fields[name]!(value[name]!));
}

const score = claim({ score: isNumber, max: isNumber, passed: isFlag });
const scored = field(
  t`null, or an object with score, max and passed`,
  (value) => value === null || score(value),
);

const common = { id: digest, at: instant, kind: text };
const ofModule = { ...common, module: text, revision: number };
const credential = { ...common, credential: object };

/** By kind, each field that it has. None may be missing, and there are no others. */
export const eventFields: { readonly [Kind in EventKind]: Readonly<Record<string, Field>> } = {
  read: ofModule,
  hazard: { ...common, hazard: text },
  quiz: {
    ...ofModule,
    quiz: digest,
    attempt: number,
    seed: text,
    preferred: texts(mostAnswers),
    answers,
    claimed: scored,
  },
  practice: {
    ...ofModule,
    graph: digest,
    practice: text,
    given: texts(2 * mostAnswers),
    claimed: field(t`an object with right: true or false`, claim({ right: isFlag })),
  },
  run: {
    ...ofModule,
    graph: digest,
    tried: texts(mostTries),
    claimed: field(t`an object with done and stops`, claim({ done: isFlag, stops: isNumber })),
  },
  observation: credential,
  "sign-off": credential,
  "new-key": credential,
  withdrawal: { ...common, list: object },
};
