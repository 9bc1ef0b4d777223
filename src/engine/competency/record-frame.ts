/** The fields of a record file around its events. */
import { t } from "../words.ts";
import { publicKeyOfDid } from "./did-key.ts";
import { isWrittenInstant } from "./event-fields.ts";
import { at, isList, isObject } from "./fields.ts";
import type { Json } from "./json.ts";
import { problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import { quoted } from "./quoted.ts";

type Value = Json | undefined;

const longestName = 200;

const isTime = (value: Value): boolean => typeof value === "string" && isWrittenInstant(value);
const time = t`a time in UTC to the millisecond, like 2026-11-27T19:30:00.000Z`;

/** Each field: what it must be, in words and as a test. */
const fields: Readonly<Record<string, readonly [expected: string, accepts: (value: Value) => boolean]>> = {
  record: ["1", (value) => value === 1],
  written: [time, isTime],
  programme: [t`the programme's identifier`, (value) => typeof value === "string" && value.length <= 2000],
  owner: [
    t`the trainee's key (did:key:z6Mk…)`,
    (value) => typeof value === "string" && publicKeyOfDid(value) !== undefined,
  ],
  name: [
    t`a name of 1 to ${longestName} letters on one line`,
    (value) =>
      typeof value === "string" &&
      value.trim() !== "" &&
      value.length <= longestName &&
      !/\p{Cc}/u.test(value),
  ],
  named: [time, isTime],
  events: [t`a list of events`, isList],
  signature: [t`the owner's signature (z…)`, (value) => typeof value === "string" && value.length <= 200],
};

/** Why JSON is no record file; undefined where it may be one. */
export function frameFault(json: Json): RecordProblem | undefined {
  if (!isObject(json)) return schema(t`The file holds ${quoted(json)}; expected an object with record: 1.`);
  const stranger = Object.keys(json).find((name) => !Object.hasOwn(fields, name));
  if (stranger !== undefined)
    return schema(t`The file has a field ${quoted(stranger)}, which a record does not have.`);
  for (const [name, [expected, accepts]] of Object.entries(fields)) {
    const value = at(json, name);
    if (!accepts(value)) return schema(t`"${name}" is ${quoted(value)}; expected ${expected}.`);
  }
  return undefined;
}

const schema = (words: string): RecordProblem =>
  problem("schema", t`${words} It is no competency record; choose the file that My record saved.`);
