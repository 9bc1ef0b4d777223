/** What the record needs of cryptography. Each platform hands in its quickest; `libraries.ts` has one that runs anywhere. */

export interface Primitives {
  sha256(bytes: Uint8Array): Uint8Array;
  /** Ed25519 by the strict rule: no low-order points, no non-canonical encodings. 64-byte signature, 32-byte public key. */
  verify(signature: Uint8Array, message: Uint8Array, publicKey: Uint8Array): boolean;
}

/** Signs 32..any bytes by Ed25519 to 64 bytes. A key in a browser may be one that never leaves it, so signing may take its time. */
export type Sign = (message: Uint8Array) => Promise<Uint8Array>;
