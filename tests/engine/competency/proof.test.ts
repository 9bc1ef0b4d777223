import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { credentialContexts } from "../../../src/engine/competency/contexts.ts";
import { didKeyOf, verificationMethodOf } from "../../../src/engine/competency/did-key.ts";
import type { Json, JsonObject } from "../../../src/engine/competency/json.ts";
import { base58, portable, signWith } from "../../../src/engine/competency/libraries.ts";
import { bytesToSign, checkProof, proofConfig, withProof } from "../../../src/engine/competency/proof.ts";
import { readJson } from "../../../src/engine/competency/strict-json.ts";
import { bytesOf, changed, eddsaJcs, hexOf, sample } from "./reference.ts";
import { mentor, signedBy, signOff, stranger } from "./statements.ts";

const signed = await signedBy(mentor.secret, signOff);
const proof = (signed.proof as readonly JsonObject[])[0]!;
const value = proof.proofValue as string;
const signature = base58.decode(value.slice(1));

/** The order of the base point, RFC 8032 section 5.1, little-endian. */
const order = bytesOf("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
/** The signature with S + L for S: the same number, written otherwise. */
function withOrderAdded(): Uint8Array {
  const sum = Uint8Array.from(signature);
  let carry = 0;
  for (let at = 0; at < 32; at++) {
    carry += sum[32 + at]! + order[at]!;
    sum[32 + at] = carry & 255;
    carry >>= 8;
  }
  return sum;
}

const writtenAs = (bytes: Uint8Array): string => `z${base58.encode(bytes)}`;
const inProof = (field: string): readonly (string | number)[] => ["proof", 0, field];
const lowOrderDid = didKeyOf(Uint8Array.of(1, ...new Uint8Array(31)));

const refused: readonly (readonly [string, JsonObject, string, string])[] = [
  [
    "a context added after signing",
    changed(signed, ["@context", 2], "https://club.example/terms"),
    "context",
    "@context",
  ],
  [
    "a context added to document and proof",
    changed(changed(signed, ["@context", 2], "x:y"), ["proof", 0, "@context", 2], "x:y"),
    "context",
    "@context",
  ],
  ["no contexts", changed(signed, ["@context"], undefined), "context", "@context"],
  [
    "a context in place of the list",
    changed(signed, ["@context"], credentialContexts[0]!),
    "context",
    "@context",
  ],
  [
    "a proof without contexts",
    changed(signed, inProof("@context"), undefined),
    "context",
    "proof[0].@context",
  ],
  [
    "a proof with fewer contexts",
    changed(signed, inProof("@context"), credentialContexts.slice(0, 1)),
    "context",
    "proof[0].@context",
  ],
  ["no proof", changed(signed, ["proof"], undefined), "schema", "proof"],
  ["an empty list of proofs", changed(signed, ["proof"], []), "schema", "proof"],
  ["a proof outside a list", changed(signed, ["proof"], proof), "schema", "proof"],
  ["two proofs", changed(signed, ["proof", 1], proof), "schema", "proof"],
  ["a proof that is a text", changed(signed, ["proof", 0], "z"), "schema", "proof"],
  [
    "previousProof",
    changed(signed, inProof("previousProof"), "urn:uuid:1"),
    "suite",
    "proof[0].previousProof",
  ],
  [
    "another suite",
    changed(signed, inProof("cryptosuite"), "eddsa-rdfc-2022"),
    "suite",
    "proof[0].cryptosuite",
  ],
  [
    "a suite in capitals",
    changed(signed, inProof("cryptosuite"), "EDDSA-JCS-2022"),
    "suite",
    "proof[0].cryptosuite",
  ],
  [
    "another kind of proof",
    changed(signed, inProof("type"), "Ed25519Signature2020"),
    "suite",
    "proof[0].type",
  ],
  [
    "another purpose",
    changed(signed, inProof("proofPurpose"), "authentication"),
    "suite",
    "proof[0].proofPurpose",
  ],
  ["a field more in the proof", changed(signed, inProof("domain"), "club.example"), "schema", "proof[0]"],
  ["no time of signing", changed(signed, inProof("created"), undefined), "schema", "proof[0].created"],
  [
    "a time of signing without zone",
    changed(signed, inProof("created"), "2026-11-27T19:31:00"),
    "schema",
    "proof[0].created",
  ],
  [
    "another key in the proof",
    changed(signed, inProof("verificationMethod"), verificationMethodOf(stranger.key)),
    "key-mismatch",
    "proof[0].verificationMethod",
  ],
  [
    "a key without its fragment",
    changed(signed, inProof("verificationMethod"), mentor.key),
    "key-mismatch",
    "proof[0].verificationMethod",
  ],
  [
    "another issuer",
    changed(signed, ["issuer", "id"], stranger.key),
    "key-mismatch",
    "proof[0].verificationMethod",
  ],
  ["an issuer that is no key", changed(signed, ["issuer"], "https://club.example"), "key-mismatch", "issuer"],
  ["no issuer", changed(signed, ["issuer"], undefined), "key-mismatch", "issuer"],
  [
    "issuer and proof of a stranger",
    changed(
      changed(signed, ["issuer", "id"], stranger.key),
      inProof("verificationMethod"),
      verificationMethodOf(stranger.key),
    ),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a key of low order",
    changed(
      changed(signed, ["issuer", "id"], lowOrderDid),
      inProof("verificationMethod"),
      verificationMethodOf(lowOrderDid),
    ),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "S + L for S",
    changed(signed, inProof("proofValue"), writtenAs(withOrderAdded())),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a signature of nothing but zeros",
    changed(signed, inProof("proofValue"), writtenAs(new Uint8Array(64))),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a signature cut off",
    changed(signed, inProof("proofValue"), writtenAs(signature.slice(0, 63))),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a signature in another base",
    changed(signed, inProof("proofValue"), `u${value.slice(1)}`),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "letters that base58 has not",
    changed(signed, inProof("proofValue"), `${value.slice(0, -1)}0`),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a signature of a million letters",
    changed(signed, inProof("proofValue"), `z${"2".repeat(1_000_000)}`),
    "signature",
    "proof[0].proofValue",
  ],
  ["no signature", changed(signed, inProof("proofValue"), undefined), "signature", "proof[0].proofValue"],
  [
    "another level",
    changed(signed, ["credentialSubject", "result", 0, "value"], "may teach"),
    "signature",
    "proof[0].proofValue",
  ],
  [
    "a field more",
    changed(signed, ["refreshService"], { id: "x:y", type: "x" }),
    "signature",
    "proof[0].proofValue",
  ],
  ["a field less", changed(signed, ["validUntil"], undefined), "signature", "proof[0].proofValue"],
  [
    "another time of signing",
    changed(signed, inProof("created"), "2026-11-27T19:31:01Z"),
    "signature",
    "proof[0].proofValue",
  ],
];

describe.each([
  ["portable", portable],
  ["Node's", nodePrimitives],
])("with %s primitives", (_, primitives) => {
  test("what was not touched verifies, in whatever order its fields stand", () => {
    expect(checkProof(signed, primitives)).toBeUndefined();
    const turned = Object.fromEntries(Object.entries(signed).reverse());
    expect(checkProof(turned, primitives)).toBeUndefined();
  });

  test.each(refused)("refused: %s", (_, document, code, at) => {
    expect(checkProof(document, primitives)).toMatchObject({
      code,
      at,
      message: expect.stringMatching(/Ask .+\.$/),
    });
  });

  test("the W3C's signed vector, its proof put into a list", () => {
    const { signed: vector } = eddsaJcs;
    const listed = changed(vector, ["proof"], [vector.proof as Json]);
    const issuer = `did:key:${eddsaJcs.keys.publicKeyMultibase}`;
    const contexts = vector["@context"] as string[];
    // Its issuer is a web address, not the key: everything fits but that.
    expect(checkProof(listed, primitives, contexts)?.code).toBe("key-mismatch");
    const config = vector.proof as JsonObject;
    expect(hexOf(bytesToSign(vector, config, primitives))).toBe(eddsaJcs.text("combinedHashJCS"));
    const { proofValue: _, ...bare } = config;
    expect(proofConfig(issuer, "2023-02-24T23:36:38Z", contexts)).toEqual(bare);
  });
});

test("to the letter of the standard a context added after signing verifies, which is why contexts must be ours", () => {
  const config = changed(proof, ["proofValue"], undefined);
  const { proof: _, ...document } = changed(signed, ["@context", 2], "https://club.example/terms");
  // Section 3.3.2 of Data Integrity EdDSA Cryptosuites 1.0: the proof's contexts, with which the document's begin, are put in their place.
  const asVerified = { ...document, "@context": config["@context"]! };
  expect(portable.verify(signature, bytesToSign(asVerified, config, portable), publicKey())).toBe(true);
});

const publicKey = (): Uint8Array => base58.decode(mentor.key.slice("did:key:z".length)).slice(2);

test("the secret of the W3C's vectors signs our config to the vector's proof", () => {
  const { unsigned, keys } = eddsaJcs;
  const secret = base58.decode(keys.privateKeyMultibase.slice(1)).slice(2);
  const config = proofConfig(
    `did:key:${keys.publicKeyMultibase}`,
    "2023-02-24T23:36:38Z",
    unsigned["@context"] as string[],
  );
  const made = withProof(unsigned, config, signWith(secret, bytesToSign(unsigned, config, portable)));
  expect(made).toEqual(changed(eddsaJcs.signed, ["proof"], [eddsaJcs.signed.proof as Json]));
});

describe("bytes of a signed file turned one by one", () => {
  const config = proofConfig(mentor.key, "2026-01-10T09:31:00Z");
  const small = {
    "@context": sample["@context"]!,
    id: sample.id!,
    type: sample.type!,
    issuer: mentor.key,
    validFrom: sample.validFrom!,
    credentialSubject: { id: stranger.key, result: [{ type: ["Result"], value: "92" }] },
  };
  const text = JSON.stringify(
    withProof(small, config, signWith(mentor.secret, bytesToSign(small, config, nodePrimitives))),
    null,
    1,
  );
  const bytes = new Uint8Array(Buffer.from(text));
  const decoder = new TextDecoder("utf-8", { fatal: true });

  function verifies(changedBytes: Uint8Array): boolean {
    try {
      const read = readJson(decoder.decode(changedBytes));
      return read.ok && checkProof(read.value as JsonObject, nodePrimitives) === undefined;
    } catch (error) {
      // What is not UTF-8 is no JSON.
      if (error instanceof TypeError && "code" in error && error.code === "ERR_ENCODING_INVALID_ENCODED_DATA")
        return false;
      throw error;
    }
  }

  /** What the turned byte was and has become, of those that still verify. */
  function survivors(turn: number): readonly string[] {
    return [...bytes].flatMap((byte, at) => {
      const copy = Uint8Array.from(bytes);
      copy[at] = byte ^ turn;
      return verifies(copy)
        ? [
            `${JSON.stringify(String.fromCharCode(byte))} to ${JSON.stringify(String.fromCharCode(byte ^ turn))}`,
          ]
        : [];
    });
  }

  /** JSON's white space between signs, turned into other white space, is outside what was signed: RFC 8259 section 2. */
  const whiteSpace: readonly (readonly [turn: number, survivors: readonly string[]])[] = [
    [1, []],
    [4, []],
    [32, []],
    [128, []],
    [0x2a, ['"\\n" to " "', '" " to "\\n"']],
    [7, ['"\\n" to "\\r"']],
  ];

  test("the file verifies as it is", () => {
    expect(verifies(bytes)).toBe(true);
    expect(bytes.length).toBeGreaterThan(1000);
  });

  test.each(whiteSpace)("by %i: none verifies but what was white space and still is", (turn, listed) => {
    expect(new Set(survivors(turn))).toEqual(new Set(listed));
  });
});
