/** Whether a mentor may sign what they are about to: judged as whoever checks the record afterwards will judge it. */
import type { Assessed } from "./assessed.ts";
import { dayOf } from "./calendar.ts";
import { problemsWith } from "./checks/index.ts";
import { readInstant } from "./instant.ts";
import type { Judged } from "./judged.ts";
import type { RecordProblem } from "./problems.ts";
import { isBench } from "./readiness.ts";
import type { Statement } from "./sign-off.ts";
import type { Situation } from "./situation.ts";
import type { Missing, ModuleState } from "./state.ts";
import type { SignedStatement } from "./statements.ts";
import { judgeSignOffs } from "./support.ts";

export interface BeforeSigning {
  /** Nothing may be signed while there are any. */
  readonly refusals: readonly RecordProblem[];
  /** Of a sign-off: what the trainee has still to do by themself, and modules that it needs. It refuses too. */
  readonly missing: readonly Missing[];
  /** To be known, and no reason not to sign. */
  readonly remarks: readonly RecordProblem[];
}

export interface SigningAbout {
  readonly assessed: Assessed;
  readonly situation: Situation;
  readonly states: ReadonlyMap<string, ModuleState>;
}

/** O(statements of the record). */
export function beforeSigning(
  statement: Statement,
  { assessed, situation, states }: SigningAbout,
): BeforeSigning {
  const signed = asIfSigned(statement, situation);
  const judged: Judged = { signed, problems: problemsWith(signed, situation, keysFor(statement, assessed)) };
  const all = statement.kind === "sign-off" ? withEvidence(judged, assessed, situation) : judged.problems;
  const missing = statement.kind === "sign-off" ? stillMissing(statement, states) : [];
  return {
    refusals: all.filter(({ code }) => code !== "status-list"),
    missing,
    remarks: all.filter(({ code }) => code === "status-list"),
  };
}

export const mayBeSigned = ({ refusals, missing }: BeforeSigning): boolean =>
  refusals.length === 0 && missing.length === 0;

function asIfSigned(statement: Statement, { rules }: Situation): SignedStatement {
  const from = readInstant(statement.validFrom)!;
  const until = statement.validUntil === undefined ? undefined : readInstant(statement.validUntil);
  return { ...{ statement, from, until, digest: "" }, event: undefined, day: dayOf(from, rules.timeZone) };
}

/** Whether someone is the holder of an old key is what is being said, not what is known already. */
const keysFor = ({ kind, subject }: Statement, { keys }: Assessed): ReadonlySet<string> =>
  kind === "new-key" ? new Set([...keys, subject]) : keys;

function withEvidence(judged: Judged, assessed: Assessed, situation: Situation): readonly RecordProblem[] {
  const all = judgeSignOffs({ ...assessed, judged: [...assessed.judged, judged] }, situation);
  return all.find(({ signed }) => signed === judged.signed)?.problems ?? judged.problems;
}

/** What is to be watched, `judgeSignOffs` has told. A supervised sitting is settled by the score that the mentor gives, which it tells too. */
function stillMissing(
  { module }: Extract<Statement, { kind: "sign-off" }>,
  states: ReadonlyMap<string, ModuleState>,
): readonly Missing[] {
  const missing = states.get(module)?.missing ?? [];
  return missing.filter((each) => !isBench(each) && !(each.kind === "supervised-quiz" && each.sat));
}
