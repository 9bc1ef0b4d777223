/** Mentors for tests: keys that anybody can make again, and lists of withdrawals signed with them. */
import { statusListContexts } from "../../src/engine/competency/contexts.ts";
import { didKeyOf } from "../../src/engine/competency/did-key.ts";
import type { JsonObject } from "../../src/engine/competency/json.ts";
import { portable, publicKeyOf, signWith } from "../../src/engine/competency/libraries.ts";
import { bytesToSign, proofConfig, withProof } from "../../src/engine/competency/proof.ts";

export const identifier = "tag:bench.example,2026:test";

/** 32 bytes, all the same. */
export const secretOf = (number: number): Uint8Array => new Uint8Array(32).fill(number);
export const didOf = (number: number): string => didKeyOf(publicKeyOf(secretOf(number)));

/** 16 KiB of zeros, gzipped and in base64url with the `u` of multibase: nothing is withdrawn. */
export const nothingWithdrawn = "uH4sIAAAAAAAAA-3BMQEAAADCoPVPbQwfoAAAAAAAAAAAAAAAAAAAAIC3AYbSVKsAQAAA";

export interface ListOptions {
  readonly key: number;
  readonly id?: string;
  readonly until?: string;
}

/** The list of a mentor, signed by them. */
export function signedList({ key, id, until = "2036-12-31T23:59:59Z" }: ListOptions): JsonObject {
  const issuer = didOf(key);
  const name = id ?? `${identifier}/withdrawals/${issuer}`;
  const document = {
    "@context": statusListContexts,
    id: name,
    type: ["VerifiableCredential", "BitstringStatusListCredential"],
    issuer,
    validFrom: "2026-01-01T00:00:00Z",
    validUntil: until,
    credentialSubject: {
      id: `${name}#list`,
      type: "BitstringStatusList",
      statusPurpose: "revocation",
      encodedList: nothingWithdrawn,
    },
  };
  const config = proofConfig(issuer, "2026-01-01T00:00:00Z", statusListContexts);
  return withProof(document, config, signWith(secretOf(key), bytesToSign(document, config, portable)));
}
