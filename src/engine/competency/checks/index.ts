/** Why signed statements do not count, in the order in which it is told. */
import type { RecordProblem } from "../problems.ts";
import type { Situation } from "../situation.ts";
import type { SignedStatement } from "../statements.ts";
import type { Check } from "./check.ts";
import { lapsed, notYetValid } from "./dates.ts";
import { issuer } from "./issuer.ts";
import { knownRevision, presentRevision, revisionWithdrawn } from "./revision.ts";
import { selfSigned } from "./self-signed.ts";
import { subject } from "./subject.ts";
import { statusList, withdrawn } from "./withdrawal.ts";

const checks: readonly Check[] = [
  issuer,
  selfSigned,
  subject,
  notYetValid,
  lapsed,
  withdrawn,
  revisionWithdrawn,
  statusList,
  knownRevision,
  presentRevision,
];

/** Everything against a statement on the situation's date, but for its evidence; it counts where there is nothing. */
export function problemsWith(
  signed: SignedStatement,
  situation: Situation,
  keys: ReadonlySet<string> | undefined,
): RecordProblem[] {
  return checks.flatMap((check) => check(signed, situation, keys) ?? []);
}
