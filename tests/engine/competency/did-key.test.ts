import fc from "fast-check";
import { expect, test } from "vitest";
import { didKeyOf, publicKeyOfDid, verificationMethodOf } from "../../../src/engine/competency/did-key.ts";
import { base58 } from "../../../src/engine/competency/libraries.ts";
import { sample } from "./reference.ts";

// The W3C's sample key, in the vectors of eddsa-jcs-2022; its bytes follow from base58btc alone.
const did = "did:key:z6MkrJVnaZkeFzdQyMZu1cgjg7k1pZZ6pvBQ7XJPt4swbTQ2";

test("any key goes into its name and comes out of it", () => {
  fc.assert(
    fc.property(fc.uint8Array({ minLength: 32, maxLength: 32 }), (key) => {
      expect(didKeyOf(key)).toMatch(/^did:key:z6Mk[1-9A-HJ-NP-Za-km-z]{44}$/);
      expect(publicKeyOfDid(didKeyOf(key))).toEqual(key);
    }),
  );
});

test("the method is named as in the sample", () => {
  expect(verificationMethodOf(did)).toBe(
    (sample.proof as unknown as [{ verificationMethod: string }])[0].verificationMethod,
  );
});

test.each([
  ["nothing", ""],
  ["another method", did.replace("did:key:", "did:web:")],
  ["another base", did.replace(":z", ":u")],
  ["letters that base58 has not", did.replace("Z", "0")],
  ["a letter less", did.slice(0, -1)],
  ["a letter more", `${did}1`],
  ["a space", `${did.slice(0, -1)} `],
  ["a leading zero", did.replace(":z", ":z1").slice(0, -1)],
  ["a fragment", verificationMethodOf(did)],
  [
    "another kind of key",
    `did:key:z${base58.encode(Uint8Array.of(0xec, 0x01, ...new Uint8Array(32).fill(9)))}`,
  ],
  [
    "a key of 33 bytes",
    `did:key:z${base58.encode(Uint8Array.of(0xed, 0x01, ...new Uint8Array(33).fill(9)))}`,
  ],
  ["ten thousand letters", `did:key:z${"2".repeat(10_000)}`],
])("no key: %s", (_, text) => {
  expect(publicKeyOfDid(text)).toBeUndefined();
});
