/** Hashing and verifying by Node's own crypto: several times as quick as the portable one, and of the same mind. */
import crypto, { createHash, createPublicKey, type KeyObject, verify as verifyByNode } from "node:crypto";
import type { Primitives } from "../engine/competency/primitives.ts";

/** In one call where Node has it (since 20.12): without an object for each hash, a tenth of the work of reading a sign-off. */
const sha256Of =
  typeof crypto.hash === "function"
    ? (bytes: Uint8Array) => crypto.hash("sha256", bytes, "buffer")
    : (bytes: Uint8Array) => createHash("sha256").update(bytes).digest();

export const nodePrimitives: Primitives = { sha256: (bytes) => new Uint8Array(sha256Of(bytes)), verify };

/**
 * OpenSSL itself compares [S]B − [k]A with R byte by byte and refuses S ≥ L. It takes keys in encodings that are not canonical and
 * points of low order, which are refused here before.
 */
function verify(signature: Uint8Array, message: Uint8Array, publicKey: Uint8Array): boolean {
  if (signature.length !== 64 || publicKey.length !== 32) return false;
  if (!isStrict(signature.subarray(0, 32))) return false;
  const key = keyOf(publicKey);
  return key !== undefined && verifyByNode(null, message, key, signature);
}

const p = 2n ** 255n - 19n;
/** y of a point of order 8, and p less it; RFC 8032 gives the curve, libsodium lists these. */
const eighth = 0x7a03ac9277fdc74ec6cc392cfa53202a0f67100d760b3cba4fd84d3d706a17c7n;
/** y of all points of low order: of order 4, 1, 2 and 8. */
const lowOrder = new Set([0n, 1n, p - 1n, eighth, p - eighth]);

/** True where y is below p and not that of a point of low order. Where x is 0, y is 1 or −1, so no sign of x is wrong. */
function isStrict(point: Uint8Array): boolean {
  const y = BigInt(`0x${Buffer.from(point).reverse().toString("hex")}`) & (2n ** 255n - 1n);
  return y < p && !lowOrder.has(y);
}

/** Of the few mentors and owners whose signatures come again and again; undefined of what is no strict key. */
const kept = new Map<string, KeyObject | undefined>();
const mostKept = 1000;

function keyOf(publicKey: Uint8Array): KeyObject | undefined {
  const name = Buffer.from(publicKey).toString("base64url");
  if (kept.has(name)) return kept.get(name);
  if (kept.size >= mostKept) kept.clear();
  const made = isStrict(publicKey)
    ? createPublicKey({ key: { kty: "OKP", crv: "Ed25519", x: name }, format: "jwk" })
    : undefined;
  kept.set(name, made);
  return made;
}
