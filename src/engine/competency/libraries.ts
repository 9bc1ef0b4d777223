/**
 * The only file of the engine that imports packages: what the record needs of cryptography and encodings, on any platform.
 * `crypto.subtle` is absent on plain http and gives only promises, so hashing and verifying are in the language itself.
 */
import { getPublicKey, hashes, Point, sign } from "@noble/ed25519";
import { sha256, sha512 } from "@noble/hashes/sha2.js";
import { base58 as base58btc, base64urlnopad, utf8 as utf8Bytes } from "@scure/base";
import type { Primitives } from "./primitives.ts";

export { canonicalText } from "./canonical.ts";

hashes.sha512 = sha512;

export interface Encoding {
  encode(bytes: Uint8Array): string;
  /** Throws on anything that `encode` does not give. Of base58 the time grows with the square of the length. */
  decode(text: string): Uint8Array;
}

/** base58btc, without the `z` of multibase. */
export const base58: Encoding = base58btc;
/** RFC 4648 section 5 without padding; without the `u` of multibase. */
export const base64url: Encoding = base64urlnopad;

/** The UTF-8 of a text. */
export const utf8 = (text: string): Uint8Array => utf8Bytes.decode(text);

/** The 32-byte public key of a 32-byte secret (RFC 8032 section 5.1.5). Throws on another length. */
export const publicKeyOf = (secret: Uint8Array): Uint8Array => getPublicKey(secret);

/** The 64-byte Ed25519 signature (RFC 8032 section 5.1.6); the same message and secret give the same. */
export const signWith = (secret: Uint8Array, message: Uint8Array): Uint8Array => sign(message, secret);

/** Hash and verification that run anywhere, about a tenth as quick as a platform's own. */
export const portable: Primitives = { sha256, verify };

/**
 * RFC 8032 section 5.1.7 with the equation [S]B = R + [k]A as it stands, without the cofactor: so do OpenSSL and
 * BoringSSL, and a signature must not be right in one place and wrong in another. Besides, points of low order are refused,
 * since under such a key one signature fits many messages.
 */
function verify(signature: Uint8Array, message: Uint8Array, publicKey: Uint8Array): boolean {
  if (signature.length !== 64 || publicKey.length !== 32) return false;
  const key = strictPoint(publicKey);
  const commitment = strictPoint(signature.subarray(0, 32));
  const s = littleEndian(signature.subarray(32));
  if (key === undefined || commitment === undefined || s >= order) return false;
  const hash = sha512.create().update(signature.subarray(0, 32)).update(publicKey).update(message).digest();
  const k = littleEndian(hash) % order;
  return Point.BASE.multiply(s, false).equals(commitment.add(key.multiply(k, false)));
}

const order = Point.CURVE().n;

/** Undefined where the bytes are no canonical encoding of a point, or the point is of low order. */
function strictPoint(bytes: Uint8Array): Point | undefined {
  try {
    const point = Point.fromBytes(bytes);
    return point.isSmallOrder() ? undefined : point;
  } catch {
    return undefined;
  }
}

function littleEndian(bytes: Uint8Array): bigint {
  return bytes.reduceRight((sum, byte) => sum * 256n + BigInt(byte), 0n);
}
