/** Everything that is wrong with a record or a credential, for whoever wants to know whether to trust it. */
import { t } from "../words.ts";
import { type Assessed, assess } from "./assessed.ts";
import { problemsWith } from "./checks/index.ts";
import { readInstant } from "./instant.ts";
import type { Judged } from "./judged.ts";
import { levels } from "./levels.ts";
import type { Primitives } from "./primitives.ts";
import { placed, problem } from "./problem.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { CompetencyRecord } from "./record.ts";
import { readRecordJson } from "./record-file.ts";
import { type GivenStatement, givenStatements } from "./signed-file.ts";
import { type Situation, type SituationInput, situationOf } from "./situation.ts";
import { readStatement } from "./statements.ts";
import { readJson } from "./strict-json.ts";
import { type JudgedSignOff, judgeSignOffs } from "./support.ts";

export interface CheckInput extends SituationInput {
  readonly primitives: Primitives;
}

/** A statement whose signature is right, with where it stands in the file and all that is against it. */
export interface FoundStatement extends Judged {
  readonly at: string | undefined;
}

export interface Findings {
  /** The file is in order where there is none. */
  readonly problems: readonly RecordProblem[];
  /** In the order of the file, those too that have run their course. */
  readonly statements: readonly FoundStatement[];
}

/** Of a file: a record, or what mentors have signed by itself. It is ok where there is no problem. */
export function checkFile(text: string, input: CheckInput): readonly RecordProblem[] {
  const read = readJson(text);
  if (!read.ok) return [read.problem];
  const given = givenStatements(read.value);
  if (given !== undefined) return lookAtStatements(given, input).problems;
  const { record, problems } = readRecordJson(read.value, input.primitives);
  return record === undefined ? problems : [...problems, ...checkRecord(record, input)];
}

/** Of statements by themselves. What they rest on is not there to be looked at. O(size), and a signature each. */
export function lookAtStatements(
  given: readonly GivenStatement[],
  { primitives, ...input }: CheckInput,
): Findings {
  const situation = situationOf(input);
  const statements: FoundStatement[] = [];
  const problems = given.flatMap(({ json, at }) => {
    const told = (found: RecordProblem) => (at === undefined ? found : placed(found, at));
    const read = readStatement(json, input.rules, primitives);
    if (!read.ok) return [told(read.problem)];
    const against = problemsWith(read.signed, situation, undefined);
    statements.push({ signed: read.signed, at, problems: against });
    return against.map(told);
  });
  return { problems, statements };
}

/** The problems that `lookThrough` finds. */
export const checkRecord = (record: CompetencyRecord, input: CheckInput): readonly RecordProblem[] =>
  lookThrough(record, input).problems;

/**
 * Of a record that `readRecord` gave, with places counted in the order of its events; what `readRecord` has told is not told again.
 * What has run its course and was made good since is no problem: see `isMadeGood`.
 */
export function lookThrough(record: CompetencyRecord, { primitives, ...input }: CheckInput): Findings {
  const situation = situationOf(input);
  const assessed = assess(record, situation, primitives);
  const { found, judged } = judgedEvents(assessed, situation);
  const events = record.events.flatMap((event, place) => {
    const ahead = readInstant(event.at)! < situation.end ? [] : [inTheFuture(event.at, situation)];
    return [...ahead, ...(found.get(event.id) ?? [])].map((each) => placed(each, placeOf(place)));
  });
  const statements = record.events.flatMap(({ id }, place) => {
    const statement = judged.get(id);
    return statement === undefined ? [] : [{ ...statement, at: placeOf(place) }];
  });
  return { problems: [...otherProgramme(record, situation), ...events], statements };
}

const placeOf = (place: number): string => `events[${place}]`;

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

/** By the id of their event: problems, and statements with all that is against them. */
function judgedEvents(assessed: Assessed, situation: Situation) {
  const { read, judged, rescored } = assessed;
  const found = new Map<string, RecordProblem[]>();
  const add = (id: string | undefined, problems: readonly RecordProblem[]) =>
    found.set(id ?? "", [...(found.get(id ?? "") ?? []), ...problems]);
  for (const [id, statement] of read) if (!statement.ok) add(id, [statement.problem]);
  for (const [id, marked] of rescored) if (!marked.ok) add(id, [marked.problem]);
  const signOffs = judgeSignOffs(assessed, situation);
  const others = judged.filter(({ signed }) => signed.statement.kind !== "sign-off");
  const all: readonly Judged[] = [...signOffs, ...others];
  for (const each of all) if (!isMadeGood(each, signOffs)) add(each.signed.event, each.problems);
  return { found, judged: new Map(all.map((each) => [each.signed.event, each])) };
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
