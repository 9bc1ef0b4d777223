import { type CheckInput, checkCredential, checkRecord } from "../../engine/competency/check-record.ts";
import { isObject } from "../../engine/competency/fields.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { readRecordJson } from "../../engine/competency/record-file.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import { counted } from "../../report/text.ts";
import type { Action } from "../actions.ts";
import { jsonOption, type Output, printJson, WrongCall } from "../command.ts";
import { nodePrimitives } from "../primitives.ts";
import { checkList, isList } from "./check-list.ts";
import { dateOf, dayOfCall, onOption } from "./dates.ts";
import { programmeOf, programmeOptions, soundLists } from "./programme.ts";
import { readText } from "./read-text.ts";

interface Checked {
  readonly file: string;
  readonly ok: boolean;
  /** What the file is, in words; undefined where it is nothing that could be read. */
  readonly what?: string | undefined;
  readonly problems: readonly RecordProblem[];
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
    if (call.flag("json")) printJson(output, { ok, files: checked });
    else for (const each of checked) print(each, output);
    return ok ? 0 : 1;
  },
};

async function checkOne(file: string, input: CheckInput): Promise<Checked> {
  const text = readText(file);
  const json = text.ok ? readJson(text.text) : text;
  const { what, problems } = json.ok
    ? await checkJson(json.value, input)
    : { what: undefined, problems: [json.problem] };
  return { file, ok: problems.length === 0, what, problems };
}

async function checkJson(json: Json, input: CheckInput): Promise<Pick<Checked, "what" | "problems">> {
  if (isList(json))
    return { what: "a list of withdrawals", problems: await checkList(json, input.rules, Date.now()) };
  if (isObject(json) && Object.hasOwn(json, "proof"))
    return { what: "a signed statement", problems: checkCredential(json, input) };
  const { record, problems } = readRecordJson(json, input.primitives);
  if (record === undefined) return { what: undefined, problems };
  const statuses = [...input.statuses, ...(await listsIn(record))];
  const what = `the record of ${record.name}, ${counted(record.events.length, "event")}`;
  return { what, problems: [...problems, ...checkRecord(record, { ...input, statuses })] };
}

/** What a mentor withdrew stays withdrawn, whether or not the programme's list is at hand. */
export async function listsIn({ events }: CompetencyRecord) {
  return soundLists(events.flatMap((event) => (event.kind === "withdrawal" ? [event.list] : [])));
}

function print({ file, ok, what, problems }: Checked, output: Output): void {
  if (ok) {
    output.out(`${file}: in order (${what}).\n`);
    return;
  }
  const rows = problems.map(
    ({ code, message, at }) => `  ${code}${at === undefined ? "" : ` at ${at}`}\n    ${message}\n`,
  );
  output.err(
    `${file}: ${counted(problems.length, "problem")}${what === undefined ? "" : ` (${what})`}\n${rows.join("")}`,
  );
}
