import {
  type CheckInput,
  type FoundStatement,
  lookAtStatements,
  lookThrough,
} from "../../engine/competency/check-record.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { readRecordJson } from "../../engine/competency/record-file.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { givenStatements } from "../../engine/competency/signed-file.ts";
import { counted } from "../../report/text.ts";
import type { Action } from "../actions.ts";
import { jsonOption, type Output, printJson, WrongCall } from "../command.ts";
import { nodePrimitives } from "../primitives.ts";
import { checkList, isList } from "./check-list.ts";
import { dateOf, dayOfCall, onOption } from "./dates.ts";
import { programmeOf, programmeOptions, soundLists } from "./programme.ts";
import { readJsonFile } from "./read-text.ts";
import { statementJson, statementLines } from "./statement-rows.ts";

interface Found {
  /** What the file is, in words; undefined where it is nothing that could be read. */
  readonly what?: string | undefined;
  readonly problems: readonly RecordProblem[];
  /** What mentors have signed in it; undefined of a file that holds no such thing. */
  readonly statements?: readonly FoundStatement[] | undefined;
}

interface Checked extends Found {
  readonly file: string;
  readonly ok: boolean;
}

export const check: Action = {
  name: "check",
  summary: "verifies records and sign-offs: signatures, rules, withdrawals, evidence marked again",
  usage: "FILE… [--site DIR | --content DIR] [--on DATE] [--json]",
  options: { ...programmeOptions, on: onOption, json: jsonOption },
  words: 10_000,
  async run(call, files, output) {
    if (files.length === 0) throw new WrongCall("Say which: benchwright record check FILE…");
    const on = dateOf(call, "on");
    const { rules, releases, statuses } = await programmeOf(call);
    const input = { rules, releases, statuses, ...dayOfCall(on, rules), primitives: nodePrimitives };
    const checked: Checked[] = [];
    for (const file of files) checked.push(await checkOne(file, input));
    const ok = checked.every((each) => each.ok);
    if (call.flag("json")) printJson(output, { ok, files: checked.map((each) => json(each, rules)) });
    else for (const each of checked) print(each, output);
    return ok ? 0 : 1;
  },
};

async function checkOne(file: string, input: CheckInput): Promise<Checked> {
  const json = readJsonFile(file);
  const found = json.ok ? await checkJson(json.value, input) : { problems: [json.problem] };
  return { file, ok: found.problems.length === 0, ...found };
}

async function checkJson(json: Json, input: CheckInput): Promise<Found> {
  if (isList(json))
    return { what: "a list of withdrawals", problems: await checkList(json, input.rules, input.on) };
  const given = givenStatements(json);
  if (given !== undefined) return { what: signedWords(given.length), ...lookAtStatements(given, input) };
  const { record, problems } = readRecordJson(json, input.primitives);
  if (record === undefined) return { problems };
  const statuses = [...input.statuses, ...(await listsIn(record))];
  const what = `the record of ${record.name}, ${counted(record.events.length, "event")}`;
  const found = lookThrough(record, { ...input, statuses });
  return { what, ...found, problems: [...problems, ...found.problems] };
}

const signedWords = (count: number): string =>
  count === 1 ? "a signed statement" : counted(count, "signed statement");

/** What a mentor withdrew stays withdrawn, whether or not the programme's list is at hand. */
export async function listsIn({ events }: CompetencyRecord) {
  return soundLists(events.flatMap((event) => (event.kind === "withdrawal" ? [event.list] : [])));
}

const json = ({ file, ok, what, problems, statements }: Checked, { timeZone }: RecordRules) => ({
  ...{ file, ok, what, problems },
  statements: statements?.map((each) => statementJson(each, timeZone)),
});

function print({ file, ok, what, problems, statements = [] }: Checked, output: Output): void {
  const signed = statements.map(statementLines).join("");
  if (ok) {
    output.out(`${file}: in order (${what})${signed === "" ? ".\n" : `. Signed in it:\n${signed}`}`);
    return;
  }
  const rows = problems.map(
    ({ code, message, at }) => `  ${code}${at === undefined ? "" : ` at ${at}`}\n    ${message}\n`,
  );
  const head = `${file}: ${counted(problems.length, "problem")}${what === undefined ? "" : ` (${what})`}`;
  output.err(`${head}\n${rows.join("")}${signed === "" ? "" : `Signed in it:\n${signed}`}`);
}
