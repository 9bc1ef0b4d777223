/** The mentors' statements of a record, read and their signatures checked; whether they count is not judged yet. */
import { t } from "../words.ts";
import { dayOf } from "./calendar.ts";
import { readCredential } from "./credential.ts";
import { digestOf } from "./digest.ts";
import type { CredentialEvent, RecordEvent } from "./event.ts";
import { readInstant } from "./instant.ts";
import type { Json, JsonObject } from "./json.ts";
import type { Primitives } from "./primitives.ts";
import { problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import { checkProof } from "./proof.ts";
import type { Digest } from "./release.ts";
import type { RecordRules } from "./rules.ts";
import type { Statement } from "./sign-off.ts";

/** A statement whose signature is that of its issuer. */
export interface SignedStatement<Kind extends Statement = Statement> {
  readonly statement: Kind;
  /** Of the whole credential, as a mentor's `keep` lists it. Worked out when it is first asked for, which few are. */
  readonly digest: Digest;
  /** The event that holds it; undefined of a credential by itself. */
  readonly event: Digest | undefined;
  /** ms since 1970; and the date of `from` in the programme's time zone. */
  readonly from: number;
  readonly until: number | undefined;
  readonly day: string;
}

export type ReadStatement =
  | { readonly ok: true; readonly signed: SignedStatement }
  | { readonly ok: false; readonly problem: RecordProblem };

type Naming = Pick<RecordRules, "identifier" | "timeZone">;

/** Reads a credential and checks its signature. O(size). */
export function readStatement(
  json: Json,
  { identifier, timeZone }: Naming,
  primitives: Primitives,
  event?: Digest,
): ReadStatement {
  const read = readCredential(json, identifier);
  if (!read.ok) return read;
  const { statement } = read;
  const document = json as JsonObject;
  const unproved = checkProof(document, primitives);
  if (unproved !== undefined) return { ok: false, problem: unproved };
  const from = readInstant(statement.validFrom);
  const until = statement.validUntil === undefined ? undefined : readInstant(statement.validUntil);
  if (from === undefined || (statement.validUntil !== undefined && until === undefined))
    return noTime(statement);
  if (until !== undefined && until <= from) return reversed(statement);
  const day = dayOf(from, timeZone);
  return { ok: true, signed: new Signed({ statement, event, from, until, day }, document, primitives) };
}

/** A class, because each object that is written with a getter of its own has a shape of its own, which takes a fifth of the time. */
class Signed implements SignedStatement {
  readonly statement: Statement;
  readonly event: Digest | undefined;
  readonly from: number;
  readonly until: number | undefined;
  readonly day: string;
  readonly #document: JsonObject;
  readonly #primitives: Primitives;
  #digest: Digest | undefined;

  constructor(read: Omit<SignedStatement, "digest">, document: JsonObject, primitives: Primitives) {
    this.statement = read.statement;
    this.event = read.event;
    this.from = read.from;
    this.until = read.until;
    this.day = read.day;
    this.#document = document;
    this.#primitives = primitives;
  }

  get digest(): Digest {
    this.#digest ??= digestOf(this.#document, this.#primitives);
    return this.#digest;
  }
}

const noTime = ({ validFrom, validUntil }: Statement): ReadStatement => ({
  ok: false,
  problem: problem(
    "schema",
    t`It holds from "${validFrom}"${validUntil === undefined ? "" : t` until "${validUntil}"`}; expected times with a zone, of days that there are. Ask the mentor to sign again.`,
  ),
});

const reversed = ({ validFrom, validUntil }: Statement): ReadStatement => ({
  ok: false,
  problem: problem(
    "schema",
    t`It ends (${validUntil!}) before it begins (${validFrom}). Ask the mentor to sign again.`,
  ),
});

/** Those of a record by the id of their event. O(size), and a signature each. */
export function readStatements(
  events: readonly RecordEvent[],
  naming: Naming,
  primitives: Primitives,
): ReadonlyMap<Digest, ReadStatement> {
  return new Map(
    events
      .filter(isCredential)
      .map((event) => [event.id, readStatementOf(event, naming, primitives)] as const),
  );
}

const isCredential = (event: RecordEvent): event is CredentialEvent => "credential" in event;

function readStatementOf(event: CredentialEvent, naming: Naming, primitives: Primitives): ReadStatement {
  const read = readStatement(event.credential, naming, primitives, event.id);
  if (!read.ok || read.signed.statement.kind === event.kind) return read;
  return {
    ok: false,
    problem: problem(
      "schema",
      t`The event says ${event.kind}, and what was signed is ${read.signed.statement.kind}; expected the same. It does not count. Import the mentor's file again.`,
    ),
  };
}
