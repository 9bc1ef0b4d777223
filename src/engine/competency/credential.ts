/** A mentor's statement as a Verifiable Credential 2.0 in the shape of Open Badges 3.0: signed, and read back. */
import { t } from "../words.ts";
import { firstDifference } from "./difference.ts";
import { isObject, textAt } from "./fields.ts";
import type { Json, JsonObject } from "./json.ts";
import { credentialOf } from "./make-credential.ts";
import type { RecordProblem } from "./problems.ts";
import { type Signing, signDocument } from "./proof.ts";
import { quoted } from "./quoted.ts";
import { statementIn } from "./read-statement.ts";
import type { Statement } from "./sign-off.ts";
import { faultOfStatement } from "./sound-statement.ts";

export { credentialOf, statusListId } from "./make-credential.ts";

export type ReadCredential =
  | { readonly ok: true; readonly statement: Statement }
  | { readonly ok: false; readonly problem: RecordProblem };

/**
 * What a credential says, as one of the programme with this identifier; nothing of its signature, which `checkProof` looks
 * at. It is put together again from the statement and must come to the same, but for words that are for people only and
 * for fields that are not known here. O(size).
 */
export function readCredential(json: Json, identifier: string): ReadCredential {
  if (!isObject(json)) return refused("schema", undefined, t`a credential`, json);
  const statement = statementIn(json, identifier);
  if (statement === undefined) {
    const found = textAt(json, "credentialSubject", "achievement", "id");
    return refused(
      "schema",
      "credentialSubject.achievement.id",
      t`an address that begins with ${identifier}`,
      found,
    );
  }
  const fault = faultOfStatement(statement);
  if (fault !== undefined) return { ok: false, problem: fault };
  const difference = firstDifference(credentialOf(statement, identifier, ""), json, isForPeople);
  if (difference === undefined) return { ok: true, statement };
  const code = difference.path.startsWith("@context") ? "context" : "schema";
  return refused(code, difference.path, quoted(difference.expected), difference.found);
}

/** Paths at which the wording may change without a change of what is signed for. */
const isForPeople = (path: string): boolean =>
  /^(?:evidence\[\d+\]\.name|credentialSubject\.achievement\.(?:name|description|creator\.name|criteria\.narrative|resultDescription\[\d+\]\.name))$/.test(
    path,
  );

function refused(
  code: "schema" | "context",
  at: string | undefined,
  expected: string,
  found: Json | undefined,
): ReadCredential {
  const message = t`Expected ${expected}; found ${quoted(found)}. Ask for the credential as it was signed, from a mentor of this programme.`;
  return { ok: false, problem: { code, message, at } };
}

export interface SigningForProgramme extends Signing {
  readonly identifier: string;
  readonly programme: string;
}

/** The statement, signed by its issuer. Throws a RangeError where it could not be read back: nothing such is ever signed. */
export async function signStatement(
  statement: Statement,
  { identifier, programme, ...signing }: SigningForProgramme,
): Promise<JsonObject> {
  const document = credentialOf(statement, identifier, programme);
  const read = readCredential(document, identifier);
  const fault = faultOfStatement(statement) ?? (read.ok ? undefined : read.problem);
  if (fault !== undefined) throw new RangeError(fault.message);
  return signDocument(document, statement.issuer, signing);
}
