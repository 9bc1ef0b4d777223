/** What speaks against a statement that a mentor is about to sign, before it is signed. */
import type { Assessed } from "./assessed.ts";
import { dayOf } from "./calendar.ts";
import { problemsWith } from "./checks/index.ts";
import { readInstant } from "./instant.ts";
import type { RecordProblem } from "./problems.ts";
import { readiness } from "./readiness.ts";
import type { Observation, SignOff } from "./sign-off.ts";
import type { Situation } from "./situation.ts";
import type { Missing, ModuleState } from "./state.ts";
import type { SignedStatement } from "./statements.ts";
import { judgeSignOffs } from "./support.ts";

export interface BeforeSigning {
  /** As `checkRecord` would find them once it is signed. */
  readonly problems: readonly RecordProblem[];
  /** Of a sign-off: what is missing for its level. A supervised sitting that was handed in is for the mentor to mark. */
  readonly missing: readonly Missing[];
}

/**
 * `state` is how the trainee stands with the module. It may be signed where there is neither a problem nor anything missing.
 * O(size of the record). Throws a RangeError where `validFrom` is no time.
 */
export function beforeSigning(
  draft: SignOff | Observation,
  assessed: Assessed,
  situation: Situation,
  state: ModuleState | undefined,
): BeforeSigning {
  const signed = asSigned(draft, situation);
  const problems = problemsWith(signed, situation, assessed.keys);
  if (draft.kind === "observation") return { problems, missing: [] };
  const judged = judgeSignOffs(
    { ...assessed, judged: [...assessed.judged, { signed, problems }] },
    situation,
  );
  return {
    problems: judged.find((each) => each.signed === signed)!.problems,
    missing: missingFor(draft, state),
  };
}

/** Who is signed off has shown what is needed; whether there is anything new to sign, the problems tell. */
function missingFor({ level }: SignOff, state: ModuleState | undefined): Missing[] {
  const open = (state?.missing ?? []).filter((each) => readiness([each]) !== "signing");
  return level === "under eye" ? open.filter((each) => readiness([each]) !== "watching") : open;
}

function asSigned(statement: SignOff | Observation, { rules }: Situation): SignedStatement {
  const from = readInstant(statement.validFrom);
  if (from === undefined) throw new RangeError(`${statement.validFrom} is no time with a zone`);
  const until = statement.validUntil === undefined ? undefined : readInstant(statement.validUntil);
  const day = dayOf(from, rules.timeZone);
  return { statement, from, until, day, event: undefined, digest: "" };
}
