/** What can be wrong with a record or a sign-off: a closed set of codes. */

export const recordCodes = [
  "not-json",
  "too-large",
  "schema",
  "context",
  "signature",
  "suite",
  "key-mismatch",
  "issuer-unlisted",
  "issuer-compromised",
  "not-allowed",
  "self-signed",
  "subject-mismatch",
  "not-yet-valid",
  "lapsed",
  "withdrawn",
  "status-list",
  "revision",
  "evidence",
  "event-id",
  "owner-signature",
] as const;
export type RecordCode = (typeof recordCodes)[number];

/** `message` says what was found, what was expected and what to do; `at` where in the file (`events[3]`), where it is one place. */
export interface RecordProblem {
  readonly code: RecordCode;
  readonly message: string;
  readonly at?: string | undefined;
}
