/** Finds the statements that a call means: a place on the mentor's list, a signed file, or an id among files. */
import { existsSync, statSync } from "node:fs";
import { isObject } from "../../engine/competency/fields.ts";
import type { Json } from "../../engine/competency/json.ts";
import { readRecordJson } from "../../engine/competency/record-file.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { givenStatements, statementsIn } from "../../engine/competency/signed-file.ts";
import { readStatement, readStatements, type SignedStatement } from "../../engine/competency/statements.ts";
import { BadInput, WrongCall } from "../command.ts";
import { filesIn } from "../files-in.ts";
import { nodePrimitives } from "../primitives.ts";
import { readJsonFile } from "./read-text.ts";
import { statementLines, statementWords } from "./statement-rows.ts";

export interface Found {
  /** Its place on the list. */
  readonly place: number;
  readonly what: string;
}

export interface Search {
  readonly rules: RecordRules;
  /** did:key of who withdraws. */
  readonly key: string;
  /** A folder with records and signed files, or one such file, in which an id is looked up. */
  readonly records: string | undefined;
}

/** Of a file all that is signed in it. Throws a BadInput or WrongCall where there is no such statement, or somebody else has signed it. */
export function findStatements(words: readonly string[], search: Search): Found[] {
  const byId = words.some(isId) ? statementsById(search) : new Map<string, SignedStatement>();
  return words.flatMap((word) => {
    if (isPlace(word)) return [{ place: Number(word), what: `place ${word}` }];
    return statementsOf(word, byId, search).map(({ statement }) => {
      if (statement.issuer !== search.key)
        throw new BadInput(
          `${word}: this was signed by ${statement.issuerName} (${statement.issuer}), and the key is ${search.key}. Only who signed it can withdraw it.`,
        );
      return { place: statement.statusIndex, what: described(statement) };
    });
  });
}

const isId = (word: string): boolean => word.startsWith("urn:");
const isPlace = (word: string): boolean => /^\d+$/.test(word);

function statementsOf(word: string, byId: ReadonlyMap<string, SignedStatement>, search: Search) {
  if (!isId(word)) return statementsOfFile(word, search);
  const found = byId.get(word);
  if (found !== undefined) return [found];
  throw new BadInput(
    `${word}: nothing in ${search.records} holds a statement of this id that is signed as it should be. record check FILE lists the ids of a file.`,
  );
}

const described = (statement: SignedStatement["statement"]): string =>
  `${statementWords(statement)}, of ${statement.subjectName}, ${statement.validFrom.slice(0, 10)} (${statement.id})`;

/** Of all files by id. */
function statementsById({ records, rules }: Search): Map<string, SignedStatement> {
  if (records === undefined)
    throw new WrongCall("Say where the records are in which the id is looked up: --records DIR or FILE");
  const read = filesOf(records).flatMap((file) => {
    const json = readJsonFile(file);
    return json.ok ? signedIn(json.value, rules) : [];
  });
  return new Map(read.map((signed) => [signed.statement.id, signed]));
}

const filesOf = (records: string): string[] =>
  existsSync(records) && statSync(records).isFile()
    ? [records]
    : filesIn(records, [".record.json", ".signed.json"]);

/** What is signed as it should be in a record or a signed file. */
function signedIn(json: Json, rules: RecordRules): SignedStatement[] {
  const given = givenStatements(json);
  const read =
    given === undefined
      ? readStatements(readRecordJson(json, nodePrimitives).record?.events ?? [], rules, nodePrimitives)
      : given.map((each) => readStatement(each.json, rules, nodePrimitives));
  return [...read.values()].flatMap((each) => (each.ok ? [each.signed] : []));
}

function statementsOfFile(file: string, search: Search): SignedStatement[] {
  if (!existsSync(file))
    throw new BadInput(
      `${file}: there is no file of this name. Give the file that was signed, an id (urn:…, as record check FILE lists them), or a place on the list of withdrawals (a number).`,
    );
  const json = readJsonFile(file);
  if (!json.ok) throw new BadInput(`${file}: ${json.problem.message}`);
  if (isRecord(json.value)) throw wholeRecord(file, json.value, search);
  return statementsIn(json.value).map(({ json: each, at }) => {
    const read = readStatement(each, search.rules, nodePrimitives);
    if (read.ok) return read.signed;
    throw new BadInput(`${file}${at ?? ""}: ${read.problem.message}`);
  });
}

const isRecord = (json: Json): boolean => isObject(json) && Object.hasOwn(json, "record");

/** A record is never withdrawn as a whole: it says what the key has signed in it, to choose from. */
function wholeRecord(file: string, json: Json, { rules, key }: Search): Error {
  const own = signedIn(json, rules).filter(({ statement }) => statement.issuer === key);
  if (own.length === 0)
    return new BadInput(`${file}: this is a whole record, and the key has signed nothing in it.`);
  const lines = own.map((signed) => statementLines({ signed, problems: [] })).join("");
  return new WrongCall(
    `${file}: this is a whole record. Give the id of what is to be withdrawn, and --records ${file}. Signed in it by the key:\n${lines.trimEnd()}`,
  );
}
