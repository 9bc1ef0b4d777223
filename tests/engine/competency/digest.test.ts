import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { digestOf, digestOfText, isDigest } from "../../../src/engine/competency/digest.ts";
import { portable } from "../../../src/engine/competency/libraries.ts";
import { sample } from "./reference.ts";

test("the digest of the empty text and of abc, by FIPS 180-4", () => {
  // SHA-256 of "" is e3b0c442…b855, of "abc" ba7816bf…15ad (FIPS 180-4, examples); multihash of it: 12 20 before it.
  const hex = (digest: string): string => Buffer.from(digest.slice(1), "base64url").toString("hex");
  expect(hex(digestOfText("", portable))).toBe(
    "1220e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
  );
  expect(hex(digestOfText("abc", portable))).toBe(
    "1220ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});

test("both platforms give the same, as Node's hash does, and what they give is a digest", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), (text) => {
      const digest = digestOfText(text, portable);
      expect(digestOfText(text, nodePrimitives)).toBe(digest);
      expect(Buffer.from(digest.slice(1), "base64url").subarray(2)).toEqual(
        createHash("sha256").update(text).digest(),
      );
      expect(isDigest(digest)).toBe(true);
    }),
  );
});

test("the order of fields does not matter, that of lists does", () => {
  expect(digestOf({ b: 1, a: [2, 3] }, portable)).toBe(digestOf({ a: [2, 3], b: 1 }, portable));
  expect(digestOf({ a: [3, 2], b: 1 }, portable)).not.toBe(digestOf({ a: [2, 3], b: 1 }, portable));
});

test("what is a digest", () => {
  const digest = (sample.evidence as unknown as [{ digestMultibase: string }])[0].digestMultibase;
  expect(isDigest(digest)).toBe(true);
  // The last letter has two bits of the hash and four that must be 0.
  expect(isDigest(`${digest.slice(0, -1)}R`)).toBe(false);
  for (const other of [
    "",
    digest.slice(1),
    `${digest}A`,
    digest.slice(0, -1),
    digest.replace("uEi", "zEi"),
    `${digest}=`,
  ])
    expect(isDigest(other)).toBe(false);
});
