import { t } from "../../words.ts";
import { signingOf, whyNotSign } from "../may-sign.ts";
import { problem } from "../problem.ts";
import type { RecordProblem } from "../problems.ts";
import type { Mentor } from "../rules.ts";
import type { SignedStatement } from "../statements.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

/** Whether the programme lists who signed, and let them sign this then. */
export const issuer: Check = (signed, { mentors, on }) => {
  const rows = mentors.get(signed.statement.issuer) ?? [];
  if (rows.length === 0) return unlisted(signed);
  return compromised(signed, rows, on) ?? notAllowed(signed, rows);
};

const unlisted = (signed: SignedStatement): RecordProblem =>
  problem(
    "issuer-unlisted",
    t`${called(signed)} bears a key that is no mentor's of this programme: ${signed.statement.issuer}. Expected one that programme.yaml lists under mentors. Ask the programme whether this person is a mentor, and with which key.`,
  );

/** A stolen key can date backwards: from the day on only what is listed counts, whatever date it bears. */
function compromised(signed: SignedStatement, rows: readonly Mentor[], on: string) {
  const row = rows.find((each) => each.compromised !== undefined && each.compromised <= on);
  if (row === undefined || rows.some(({ keep }) => keep.includes(signed.digest))) return undefined;
  return problem(
    "issuer-compromised",
    t`${called(signed)} bears a key that is in other hands since ${row.compromised!}; only what the programme lists under keep still counts, and ${signed.digest} is not there. Ask the mentor whether they signed it; then the programme adds it to keep, or they sign again with their new key.`,
  );
}

function notAllowed(signed: SignedStatement, rows: readonly Mentor[]): RecordProblem | undefined {
  const reason = whyNotSign(rows, signingOf(signed.statement), signed.day);
  if (reason === undefined) return undefined;
  return problem(
    "not-allowed",
    t`${called(signed)} does not count: ${reason}. Ask a mentor who may sign it to look and sign.`,
  );
}
