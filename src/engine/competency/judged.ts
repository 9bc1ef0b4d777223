/** Signed statements with what is against them. */
import type { SignedObservation } from "./observed.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { SignOff } from "./sign-off.ts";
import type { SignedStatement } from "./statements.ts";

/** A signed statement and all that is against it, but for its evidence. */
export interface Judged<Signed extends SignedStatement = SignedStatement> {
  readonly signed: Signed;
  readonly problems: readonly RecordProblem[];
}

export type SignedSignOff = SignedStatement<SignOff>;
export type JudgedObservation = Judged<SignedObservation>;

export const isObservation = (judged: Judged): judged is JudgedObservation =>
  judged.signed.statement.kind === "observation";
export const isSignOff = (judged: Judged): judged is Judged<SignedSignOff> =>
  judged.signed.statement.kind === "sign-off";

/** A mentor's statement is known by its id. */
export const statementKey = ({ statement }: SignedStatement): string => `${statement.issuer} ${statement.id}`;

/** Nothing is against it but what is passed over for the purpose. */
export const isUsable = (problems: readonly RecordProblem[], passedOver: readonly RecordCode[]): boolean =>
  problems.every(({ code }) => passedOver.includes(code));
