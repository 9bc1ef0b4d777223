/** Signs and checks documents by Data Integrity 1.0 with the cryptosuite eddsa-jcs-2022 (W3C Recommendation, 15 May 2025). */

import { t } from "../words.ts";
import { canonicalText } from "./canonical.ts";
import { credentialContexts } from "./contexts.ts";
import { verificationMethodOf } from "./did-key.ts";
import { without } from "./fields.ts";
import type { JsonObject } from "./json.ts";
import { base58, utf8 } from "./libraries.ts";
import type { Primitives, Sign } from "./primitives.ts";
import type { RecordProblem } from "./problems.ts";
import { readProof } from "./read-proof.ts";

/** The proof but for its value. `created` is an instant in UTC; `contexts` are those of the document. */
export const proofConfig = (
  issuer: string,
  created: string,
  contexts: readonly string[] = credentialContexts,
): JsonObject => ({
  type: "DataIntegrityProof",
  cryptosuite: "eddsa-jcs-2022",
  created,
  verificationMethod: verificationMethodOf(issuer),
  proofPurpose: "assertionMethod",
  "@context": contexts,
});

/**
 * The 64 bytes to sign, by section 3.3.4 of Data Integrity EdDSA Cryptosuites 1.0: SHA-256 of the canonical proof without
 * its value, then SHA-256 of the canonical document without its proof. Throws on what is no JSON. O(size).
 */
export function bytesToSign(
  document: JsonObject,
  config: JsonObject,
  { sha256 }: Pick<Primitives, "sha256">,
): Uint8Array {
  const hashWithout = (part: JsonObject, name: string) => sha256(utf8(canonicalText(without(part, name))));
  const bytes = new Uint8Array(64);
  bytes.set(hashWithout(config, "proofValue"));
  bytes.set(hashWithout(document, "proof"), 32);
  return bytes;
}

/** The document with its one proof. The signature is of `bytesToSign`. */
export const withProof = (document: JsonObject, config: JsonObject, signature: Uint8Array): JsonObject => ({
  ...document,
  proof: [{ ...config, proofValue: `z${base58.encode(signature)}` }],
});

export interface Signing {
  /** By the key of the document's issuer. */
  readonly sign: Sign;
  readonly primitives: Pick<Primitives, "sha256">;
  /** An instant in UTC. */
  readonly created: string;
}

/** The document with the proof of its issuer, a did:key, over its own contexts. */
export async function signDocument(
  document: JsonObject & { readonly "@context": readonly string[] },
  issuer: string,
  { sign, primitives, created }: Signing,
): Promise<JsonObject> {
  const config = proofConfig(issuer, created, document["@context"]);
  return withProof(document, config, await sign(bytesToSign(document, config, primitives)));
}

/**
 * Why a document is not signed by its issuer, as far as the document itself can tell; undefined where it is. Its contexts
 * must be `contexts` and no others: to the letter of the standard a context added after signing still verifies. O(size).
 */
export function checkProof(
  document: JsonObject,
  primitives: Primitives,
  contexts: readonly string[] = credentialContexts,
): RecordProblem | undefined {
  const read = readProof(document, contexts);
  if (!read.ok) return read.problem;
  const message = bytesToSign(document, read.proof, primitives);
  if (primitives.verify(read.signature, message, read.publicKey)) return undefined;
  return {
    code: "signature",
    message: t`The signature does not fit: something was changed after signing, or another key signed. Ask the mentor for the file as they signed it; a changed one can't be mended.`,
    at: "proof[0].proofValue",
  };
}
