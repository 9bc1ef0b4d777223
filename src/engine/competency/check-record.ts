/** Everything that is wrong with a record or a credential, for whoever wants to know whether to trust it. */
import { t } from "../words.ts";
import { type Assessed, assess } from "./assessed.ts";
import { problemsWith } from "./checks/index.ts";
import { isObject } from "./fields.ts";
import { readInstant } from "./instant.ts";
import type { Json } from "./json.ts";
import type { Judged } from "./judged.ts";
import { levels } from "./levels.ts";
import type { Primitives } from "./primitives.ts";
import { placed, problem } from "./problem.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { CompetencyRecord } from "./record.ts";
import { readRecordJson } from "./record-file.ts";
import { type Situation, type SituationInput, situationOf } from "./situation.ts";
import { readStatement } from "./statements.ts";
import { readJson } from "./strict-json.ts";
import { type JudgedSignOff, judgeSignOffs } from "./support.ts";

export interface CheckInput extends SituationInput {
  readonly primitives: Primitives;
}

/** Of a file: a record, or a credential by itself. It is ok where there is no problem. */
export function checkFile(text: string, input: CheckInput): RecordProblem[] {
  const read = readJson(text);
  if (!read.ok) return [read.problem];
  if (isObject(read.value) && Object.hasOwn(read.value, "proof")) return checkCredential(read.value, input);
  const { record, problems } = readRecordJson(read.value, input.primitives);
  return record === undefined ? [...problems] : [...problems, ...checkRecord(record, input)];
}

/** Of a credential by itself. What it rests on is not there to be looked at. */
export function checkCredential(json: Json, { primitives, ...input }: CheckInput): RecordProblem[] {
  const read = readStatement(json, input.rules, primitives);
  return read.ok ? problemsWith(read.signed, situationOf(input), undefined) : [read.problem];
}

/**
 * Of a record that `readRecord` gave, with places counted in the order of its events; what `readRecord` has told is not told again.
 * What has run its course and was made good since is no problem: see `isMadeGood`.
 */
export function checkRecord(record: CompetencyRecord, { primitives, ...input }: CheckInput): RecordProblem[] {
  const situation = situationOf(input);
  const assessed = assess(record, situation, primitives);
  const found = problemsById(assessed, situation);
  const events = record.events.flatMap((event, place) => {
    const ahead = readInstant(event.at)! < situation.end ? [] : [inTheFuture(event.at, situation)];
    return [...ahead, ...(found.get(event.id) ?? [])].map((each) => placed(each, `events[${place}]`));
  });
  return [...otherProgramme(record, situation), ...events];
}

function otherProgramme({ programme }: CompetencyRecord, { rules }: Situation): RecordProblem[] {
  if (programme === rules.identifier) return [];
  const words = t`This is a record of the programme ${programme}; expected one of ${rules.identifier} (${rules.programme}). Check it on the site of its own programme.`;
  return [problem("schema", words, "programme")];
}

const inTheFuture = (at: string, { on }: Situation): RecordProblem =>
  problem(
    "not-yet-valid",
    t`This event is dated ${at}, after the end of ${on}, and is passed over until then. If the clock of the device was wrong, do it again with the clock put right.`,
  );

function problemsById(assessed: Assessed, situation: Situation): ReadonlyMap<string, RecordProblem[]> {
  const { read, judged, rescored } = assessed;
  const found = new Map<string, RecordProblem[]>();
  const add = (id: string | undefined, problems: readonly RecordProblem[]) =>
    found.set(id ?? "", [...(found.get(id ?? "") ?? []), ...problems]);
  for (const [id, statement] of read) if (!statement.ok) add(id, [statement.problem]);
  for (const [id, marked] of rescored) if (!marked.ok) add(id, [marked.problem]);
  const signOffs = judgeSignOffs(assessed, situation);
  const others = judged.filter(({ signed }) => signed.statement.kind !== "sign-off");
  for (const each of [...signOffs, ...others])
    if (!isMadeGood(each, signOffs)) add(each.signed.event, each.problems);
  return found;
}

const courses: ReadonlySet<RecordCode> = new Set(["lapsed", "withdrawn", "revision"] as const);

/**
 * What ran out or was withdrawn, where a later sign-off that counts lets the person do as much: it stays in the record for ever, and is no fault of
 * it. An observation is made good by any later sign-off on its module.
 */
function isMadeGood({ signed, problems }: Judged, signOffs: readonly JudgedSignOff[]): boolean {
  const { statement, from } = signed;
  if (statement.kind === "new-key" || !problems.every(({ code }) => courses.has(code))) return false;
  const least = statement.kind === "sign-off" ? levels.indexOf(statement.level) : 0;
  return signOffs.some(
    ({ signed: later, problems: against }) =>
      against.length === 0 &&
      later.statement.module === statement.module &&
      later.from > from &&
      levels.indexOf(later.statement.level) >= least,
  );
}
