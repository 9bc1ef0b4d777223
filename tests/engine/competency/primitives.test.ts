/** Node's verification and the portable one are of the same mind, where verifiers are known to differ. */
import { createPublicKey, verify as verifyByNode } from "node:crypto";
import { Point } from "@noble/ed25519";
import { sha512 } from "@noble/hashes/sha2.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { portable, publicKeyOf, signWith } from "../../../src/engine/competency/libraries.ts";
import { bytesOf, hexOf } from "./reference.ts";

/** RFC 8032 section 5.1. */
const order = 2n ** 252n + 27742317777372353535851937790883648493n;
const prime = 2n ** 255n - 19n;

interface Signed {
  readonly signature: Uint8Array;
  readonly message: Uint8Array;
  readonly key: Uint8Array;
}

/** What both say; fails where they differ. */
function verdict({ signature, message, key }: Signed): boolean {
  const [inEngine, inNode] = [portable, nodePrimitives].map(({ verify }) => verify(signature, message, key));
  expect({ inEngine, key: hexOf(key), signature: hexOf(signature) }).toEqual({
    inEngine: inNode,
    key: hexOf(key),
    signature: hexOf(signature),
  });
  return inEngine!;
}

/** What OpenSSL says without the checks before it. */
function lax({ signature, message, key }: Signed): boolean {
  const x = Buffer.from(key).toString("base64url");
  return verifyByNode(
    null,
    message,
    createPublicKey({ key: { kty: "OKP", crv: "Ed25519", x }, format: "jwk" }),
    signature,
  );
}

const number = (bytes: Uint8Array): bigint => bytes.reduceRight((sum, byte) => sum * 256n + BigInt(byte), 0n);
const bytes32 = (value: bigint): Uint8Array =>
  Uint8Array.from({ length: 32 }, (_, at) => Number((value >> BigInt(8 * at)) & 255n));
const joined = (...parts: readonly Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));

const challenge = (commitment: Uint8Array, key: Uint8Array, message: Uint8Array): bigint =>
  number(sha512(joined(commitment, key, message))) % order;

/** A point of order 8: it is what is left of any point when its part of the large order is taken away. */
const eighth = (() => {
  for (let y = 2; ; y++) {
    const point = decoded(bytes32(BigInt(y)));
    const left = point?.multiply(order - 1n, false).add(point);
    if (left !== undefined && !left.double().double().is0()) return left;
  }
})();

function decoded(bytes: Uint8Array): Point | undefined {
  try {
    return Point.fromBytes(bytes);
  } catch {
    return undefined;
  }
}

const lowOrder = Array.from({ length: 8 }, (_, times) => eighth.multiply(BigInt(times), false).toBytes());
/** y from p on, and x = 0 with the sign set: 19 values of y, either sign, and two more. */
const notCanonical = [
  ...Array.from({ length: 38 }, (_, at) =>
    bytes32(prime + BigInt(at >> 1) + (at % 2 === 0 ? 0n : 2n ** 255n)),
  ),
  bytes32(1n + 2n ** 255n),
  bytes32(prime - 1n + 2n ** 255n),
];

const bytes = (length: number) => fc.uint8Array({ minLength: length, maxLength: length });
const message = fc.uint8Array({ maxLength: 80 });
const honest = fc.record({ secret: bytes(32), message }).map(
  ({ secret, message }): Signed => ({
    signature: signWith(secret, message),
    message,
    key: publicKeyOf(secret),
  }),
);

describe("both verify", () => {
  test("what was signed", () => {
    fc.assert(fc.property(honest, (signed) => verdict(signed)));
  });

  test("nothing of which a bit was turned", () => {
    fc.assert(
      fc.property(honest, fc.constantFrom("signature", "key", "message"), fc.nat(), (signed, part, turn) => {
        const changed = Uint8Array.from(signed[part]);
        if (changed.length === 0) return;
        changed[(turn >> 3) % changed.length]! ^= 1 << (turn & 7);
        expect(verdict({ ...signed, [part]: changed })).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test("nothing made of bytes by chance", () => {
    fc.assert(
      fc.property(bytes(64), message, bytes(32), (signature, message, key) => {
        expect(verdict({ signature, message, key })).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test("nothing of another length", () => {
    fc.assert(
      fc.property(honest, fc.integer({ min: 0, max: 63 }), (signed, length) => {
        expect(verdict({ ...signed, signature: signed.signature.subarray(0, length) })).toBe(false);
        expect(verdict({ ...signed, signature: joined(signed.signature, Uint8Array.of(0)) })).toBe(false);
        expect(verdict({ ...signed, key: signed.key.subarray(0, length >> 1) })).toBe(false);
      }),
      { numRuns: 20 },
    );
  });

  test("no signature whose S is L or more (RFC 8032 section 5.1.7)", () => {
    fc.assert(
      fc.property(honest, fc.integer({ min: 1, max: 14 }), (signed, times) => {
        const s = number(signed.signature.subarray(32)) + BigInt(times) * order;
        const signature = joined(signed.signature.subarray(0, 32), bytes32(s));
        expect(verdict({ ...signed, signature })).toBe(false);
      }),
    );
  });
});

/** The first of random signatures by the secret a = 1 under A + T, for which [S]B = R + [k](A + T), as k is a multiple of 8. */
function underMixedKey(torsion: Point): Signed {
  const key = Point.BASE.add(torsion).toBytes();
  const message = bytesOf("616263");
  for (let nonce = 1n; ; nonce++) {
    const commitment = Point.BASE.multiply(nonce).toBytes();
    const k = challenge(commitment, key, message);
    if (k % 8n === 0n) return { signature: joined(commitment, bytes32((nonce + k) % order)), message, key };
  }
}

describe("points of low order", () => {
  test("there are eight of them, and 40 encodings that are not canonical", () => {
    expect(new Set(lowOrder.map(hexOf)).size).toBe(8);
    expect(new Set(notCanonical.map(hexOf)).size).toBe(40);
  });

  test("are no keys, although a signature can be made that fits any message", () => {
    const identity = lowOrder[0]!;
    const s = 5n;
    const forged = { signature: joined(Point.BASE.multiply(s).toBytes(), bytes32(s)), key: identity };
    for (const text of ["a", "b"]) {
      const signed = { ...forged, message: new Uint8Array(Buffer.from(text)) };
      expect(lax(signed)).toBe(true);
      expect(verdict(signed)).toBe(false);
    }
  });

  test.each([...lowOrder, ...notCanonical].map((point) => [hexOf(point), point]))(
    "%s is neither key nor R",
    (_, point) => {
      fc.assert(
        fc.property(message, fc.bigInt({ min: 1n, max: order - 1n }), honest, (message, s, signed) => {
          const commitment = Point.BASE.multiply(s).toBytes();
          expect(verdict({ signature: joined(commitment, bytes32(s)), message, key: point })).toBe(false);
          // [S]B = R + [k]A with the secret a = 1 and R of low order: right to the letter where [k]R is nothing.
          const k = challenge(point, Point.BASE.toBytes(), message);
          expect(verdict({ signature: joined(point, bytes32(k)), message, key: Point.BASE.toBytes() })).toBe(
            false,
          );
          expect(verdict({ ...signed, signature: joined(point, signed.signature.subarray(32)) })).toBe(false);
        }),
        { numRuns: 5 },
      );
    },
  );

  test("added to a key or to R, are judged alike: the equation holds as it stands, or the signature does not", () => {
    const torsions = [1n, 2n, 4n].map((times) => eighth.multiply(times, false));
    for (const torsion of torsions) {
      const signed = underMixedKey(torsion);
      expect(verdict(signed)).toBe(true);
      const commitment = decoded(signed.signature.subarray(0, 32))!.add(torsion).toBytes();
      const k = challenge(commitment, signed.key, signed.message);
      // Right where both sides are multiplied by 8, and not as it stands: k·T or T is left over.
      const nonce =
        number(signed.signature.subarray(32)) -
        challenge(signed.signature.subarray(0, 32), signed.key, signed.message);
      const s = (((nonce + k) % order) + order) % order;
      const leftOver = torsion.add(torsion.multiply(k, false)).is0();
      expect(verdict({ ...signed, signature: joined(commitment, bytes32(s)) })).toBe(leftOver);
    }
  });
});
