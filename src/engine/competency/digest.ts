/** Digests as they stand in records and credentials: `uEi…`, which is multibase base64url of a multihash of SHA-256. */

import { canonicalText } from "./canonical.ts";
import type { Json } from "./json.ts";
import { base64url, utf8 } from "./libraries.ts";
import type { Primitives } from "./primitives.ts";
import type { Digest } from "./release.ts";

type Hash = Pick<Primitives, "sha256">;

/** Of the canonical JSON of a value. Throws on what is no JSON. O(size). */
export const digestOf = (value: Json, primitives: Hash): Digest =>
  digestOfText(canonicalText(value), primitives);

/** Of the text's UTF-8. O(size). */
export const digestOfText = (text: string, primitives: Hash): Digest => digestOfBytes(utf8(text), primitives);

/** Multihash: code 0x12 (sha2-256), length 0x20, then the hash; multibase: `u`. */
export function digestOfBytes(bytes: Uint8Array, { sha256 }: Hash): Digest {
  return `u${base64url.encode(Uint8Array.of(0x12, 0x20, ...sha256(bytes)))}`;
}

/** True of text in the one form that the functions above give: 34 bytes are 46 letters, of whose last only two bits count. */
export const isDigest = (text: string): boolean => /^uEi[A-D][A-Za-z0-9_-]{42}[AQgw]$/.test(text);
