/** What a file brings that someone adds to their record: another copy of it, or what a mentor has signed. Nothing is stored here. */
import { problemsWith } from "../../engine/competency/checks/index.ts";
import { digestOf } from "../../engine/competency/digest.ts";
import type { RecordEvent } from "../../engine/competency/event.ts";
import { makeEvent } from "../../engine/competency/events.ts";
import { isObject } from "../../engine/competency/fields.ts";
import type { Json, JsonObject } from "../../engine/competency/json.ts";
import { portable } from "../../engine/competency/libraries.ts";
import { mergeRecords, underKey } from "../../engine/competency/merge.ts";
import { placed, problem } from "../../engine/competency/problem.ts";
import type { RecordCode, RecordProblem } from "../../engine/competency/problems.ts";
import { readRecordJson } from "../../engine/competency/record-file.ts";
import { type GivenStatement, givenStatements } from "../../engine/competency/signed-file.ts";
import { readStatement } from "../../engine/competency/statements.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import type { Overview } from "./overview.ts";

export type AddedFile =
  | {
      readonly ok: true;
      /** Those that are not in the record yet. */
      readonly events: readonly RecordEvent[];
      /** The name that holds afterwards, and when it was chosen. */
      readonly name: string;
      readonly named: string;
      /** Of what was signed: what is to be known about it. It is added all the same. */
      readonly remarks: readonly RecordProblem[];
    }
  | { readonly ok: false; readonly problems: readonly RecordProblem[] };

/** Judges the whole file before anything of it is taken. `now` is RFC 3339 in UTC. O(size). */
export function addedFile(text: string, mine: Overview, now: string): AddedFile {
  const json = readJson(text);
  if (!json.ok) return { ok: false, problems: [json.problem] };
  const given = givenStatements(json.value);
  return given === undefined ? addedRecord(json.value, mine) : addedStatements(given, mine, now);
}

function addedRecord(json: Json, { record: mine, assessed }: Overview): AddedFile {
  const { record, problems } = readRecordJson(json, portable);
  if (record === undefined || problems.length > 0) return { ok: false, problems };
  if (record.programme !== mine.programme)
    return refused(
      "schema",
      `The file is a record of another programme (${record.programme}); expected one of ${mine.programme}. Add it to the site of that programme.`,
    );
  if (!assessed.keys.has(record.owner))
    return refused(
      "subject-mismatch",
      `The file is the record of another key (${record.owner}); expected one of yours (${mine.owner}). If it is your own from another device, take up its key first, or let a mentor sign that your new key goes on for it.`,
    );
  const { events, name, named } = mergeRecords(mine, underKey(record, mine.owner));
  const known = new Set(mine.events.map(({ id }) => id));
  return { ok: true, events: events.filter(({ id }) => !known.has(id)), name, named, remarks: [] };
}

/** With these, what was signed is not a mentor's of this programme, or not for this person: the file is refused. */
const grave: ReadonlySet<RecordCode> = new Set([
  "issuer-unlisted",
  "issuer-compromised",
  "not-allowed",
  "self-signed",
  "subject-mismatch",
]);

function addedStatements(given: readonly GivenStatement[], mine: Overview, now: string): AddedFile {
  const judged = given.map((each) => judge(each, mine, now));
  const bad = judged.flatMap(({ problems }) => problems);
  if (bad.length > 0) return { ok: false, problems: bad };
  const { name, named } = mine.record;
  const events = judged.flatMap(({ event }) => event ?? []);
  return { ok: true, events, name, named, remarks: judged.flatMap(({ remarks }) => remarks) };
}

interface JudgedCredential {
  /** Undefined where the record has it already. */
  readonly event: RecordEvent | undefined;
  readonly problems: readonly RecordProblem[];
  readonly remarks: readonly RecordProblem[];
}

function judge(
  { json, at: place }: GivenStatement,
  { record, situation, assessed }: Overview,
  now: string,
): JudgedCredential {
  const told = (found: RecordProblem): RecordProblem => (place === undefined ? found : placed(found, place));
  const read = readStatement(json, situation.rules, portable);
  if (!read.ok) return { event: undefined, problems: [told(read.problem)], remarks: [] };
  const { signed } = read;
  // Who is told of a new key is asked for by its own statement: it is for the present key.
  const keys = new Set([...assessed.keys, record.owner]);
  const found = problemsWith(signed, situation, keys).map(told);
  const isKnown = record.events.some((event) => "credential" in event && isSame(event.credential, json));
  return {
    event: isKnown
      ? undefined
      : makeEvent({ kind: signed.statement.kind, at: now, credential: json as JsonObject }, portable),
    problems: found.filter(({ code }) => grave.has(code)),
    remarks: found.filter(({ code }) => !grave.has(code)),
  };
}

const isSame = (a: JsonObject, b: Json): boolean =>
  isObject(b) && digestOf(a, portable) === digestOf(b, portable);

const refused = (code: RecordCode, words: string): AddedFile => ({
  ok: false,
  problems: [problem(code, words)],
});
