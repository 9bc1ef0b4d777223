/** Finds the statement that a call means: a place on the mentor's list, a signed file, or an id among records. */
import { isObject } from "../../engine/competency/fields.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import { readStatement, readStatements } from "../../engine/competency/statements.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import { BadInput, WrongCall } from "../command.ts";
import { nodePrimitives } from "../primitives.ts";
import { readText } from "./read-text.ts";
import { readRecordFile, recordFiles } from "./record-files.ts";

export interface Found {
  /** Its place on the list. */
  readonly place: number;
  readonly what: string;
}

export interface Search {
  readonly rules: RecordRules;
  /** did:key of who withdraws. */
  readonly key: string;
  /** Where records lie in which an id is looked up. */
  readonly records: string | undefined;
}

/** Throws a BadInput or WrongCall where there is no such statement, or somebody else has signed it. */
export function findStatements(words: readonly string[], search: Search): Found[] {
  const ids = words.filter((word) => word.startsWith("urn:"));
  const byId = ids.length === 0 ? new Map<string, Statement>() : statementsIn(search);
  return words.map((word) => {
    if (/^\d+$/.test(word)) return { place: Number(word), what: `place ${word}` };
    const statement = word.startsWith("urn:") ? byId.get(word) : statementOfFile(word, search.rules);
    if (statement === undefined)
      throw new BadInput(
        `${word}: no record in ${search.records} holds a statement of this id that is signed as it should be.`,
      );
    if (statement.issuer !== search.key)
      throw new BadInput(
        `${word}: this was signed by ${statement.issuerName} (${statement.issuer}), and the key is ${search.key}. Only who signed it can withdraw it.`,
      );
    return { place: statement.statusIndex, what: described(statement) };
  });
}

const described = (statement: Statement): string => {
  const on = statement.kind === "new-key" ? "" : ` on ${statement.module}, revision ${statement.revision},`;
  return `${statement.kind}${on} of ${statement.subjectName}, ${statement.validFrom.slice(0, 10)} (${statement.id})`;
};

/** Of all records by id. */
function statementsIn({ records, rules }: Search): Map<string, Statement> {
  if (records === undefined)
    throw new WrongCall("Say where the records are in which the id is looked up: --records DIR");
  const found = new Map<string, Statement>();
  for (const file of recordFiles(records)) {
    const { record } = readRecordFile(file);
    for (const read of readStatements(record?.events ?? [], rules, nodePrimitives).values())
      if (read.ok) found.set(read.signed.statement.id, read.signed.statement);
  }
  return found;
}

function statementOfFile(file: string, rules: RecordRules): Statement {
  const text = readText(file);
  const json = text.ok ? readJson(text.text) : text;
  if (!json.ok) throw new BadInput(`${file}: ${json.problem.message}`);
  if (isRecord(json.value))
    throw new WrongCall(
      `${file}: this is a whole record. Give the id of the sign-off, and --records with the folder.`,
    );
  const read = readStatement(json.value, rules, nodePrimitives);
  if (!read.ok) throw new BadInput(`${file}: ${read.problem.message}`);
  return read.signed.statement;
}

const isRecord = (json: Json): boolean => isObject(json) && Object.hasOwn(json, "record");
