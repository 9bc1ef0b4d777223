import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { didKeyOf } from "../../../src/engine/competency/did-key.ts";
import {
  base58,
  canonicalText,
  portable,
  publicKeyOf,
  signWith,
  utf8,
} from "../../../src/engine/competency/libraries.ts";
import { bytesToSign, checkProof } from "../../../src/engine/competency/proof.ts";
import { readJson } from "../../../src/engine/competency/strict-json.ts";
import { bytesOf, canonicalVectors, eddsaJcs, hexOf, sample, signatureVectors } from "./reference.ts";

const both = [
  ["portable", portable],
  ["Node's", nodePrimitives],
] as const;

describe("RFC 8785, the files of its author's repository", () => {
  test.each(canonicalVectors)("$name", ({ input, bytes }) => {
    const read = readJson(input);
    expect(read.ok && hexOf(utf8(canonicalText(read.value)))).toBe(bytes);
  });
});

describe("RFC 8032 section 7.1", () => {
  test("has five tests", () => {
    expect(signatureVectors.map(({ name }) => name)).toEqual([
      "TEST 1",
      "TEST 2",
      "TEST 3",
      "TEST 1024",
      "TEST SHA(abc)",
    ]);
  });

  test.each(signatureVectors)("$name: key and signature", ({ priv, pub, msg, sig }) => {
    expect(hexOf(publicKeyOf(bytesOf(priv)))).toBe(pub);
    expect(hexOf(signWith(bytesOf(priv), bytesOf(msg)))).toBe(sig);
  });

  describe.each(both)("%s verification", (_, { verify }) => {
    test.each(signatureVectors)("$name", ({ pub, msg, sig }) => {
      expect(verify(bytesOf(sig), bytesOf(msg), bytesOf(pub))).toBe(true);
      expect(verify(bytesOf(sig), bytesOf(`${msg}00`), bytesOf(pub))).toBe(false);
    });
  });
});

describe.each(both)("eddsa-jcs-2022, the W3C's test vectors, with %s primitives", (_, primitives) => {
  const { unsigned, config, keys, text } = eddsaJcs;
  const secret = base58.decode(keys.privateKeyMultibase.slice(1)).slice(2);

  test("canonical document and proof", () => {
    expect(canonicalText(unsigned)).toBe(text("canonDocJCS"));
    expect(canonicalText(config)).toBe(text("proofCanonJCS"));
  });

  test("hashes", () => {
    expect(hexOf(primitives.sha256(utf8(canonicalText(unsigned))))).toBe(text("docHashJCS"));
    expect(hexOf(primitives.sha256(utf8(canonicalText(config))))).toBe(text("proofHashJCS"));
    expect(hexOf(bytesToSign(unsigned, config, primitives))).toBe(text("combinedHashJCS"));
  });

  test("key, signature, proof value", () => {
    expect(didKeyOf(publicKeyOf(secret))).toBe(`did:key:${keys.publicKeyMultibase}`);
    const signature = signWith(secret, bytesToSign(unsigned, config, primitives));
    expect(hexOf(signature)).toBe(text("sigHexJCS"));
    expect(`z${base58.encode(signature)}`).toBe(text("sigBTC58JCS"));
    expect(primitives.verify(signature, bytesToSign(unsigned, config, primitives), publicKeyOf(secret))).toBe(
      true,
    );
  });

  test("the sample sign-off verifies", () => {
    expect(checkProof(sample, primitives)).toBeUndefined();
  });
});
