import { createHash } from "node:crypto";

/** The first 128 bits of the SHA-256 (FIPS 180-4) in base64url (RFC 4648, 5). */
export const digestOf = (content: string | Uint8Array): string =>
  createHash("sha256").update(content).digest().subarray(0, 16).toString("base64url");
