/** Held against an implementation of eddsa-jcs-2022 that is not ours: what one signs, the other verifies. */
import { generate } from "@digitalbazaar/ed25519-multikey";
import { createSignCryptosuite, createVerifyCryptosuite } from "@digitalbazaar/eddsa-jcs-2022-cryptosuite";
import fc from "fast-check";
import { expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { credentialOf } from "../../../src/engine/competency/credential.ts";
import type { JsonObject } from "../../../src/engine/competency/json.ts";
import { base58, portable } from "../../../src/engine/competency/libraries.ts";
import { bytesToSign, checkProof, proofConfig, withProof } from "../../../src/engine/competency/proof.ts";
import { changed, sample } from "./reference.ts";
import { anyStatement, identifier, mentor, programme, signedBy, signOff, statements } from "./statements.ts";

/** As a Data Integrity verifier does it: proof and document apart, the key by its method, the signature out of base58. */
async function otherVerifies(signed: JsonObject): Promise<boolean> {
  const { proof: proofs, ...document } = structuredClone(signed);
  const { proofValue, ...proof } = (proofs as readonly JsonObject[])[0]!;
  const cryptosuite = createVerifyCryptosuite();
  const data = await cryptosuite.createVerifyData({ cryptosuite, document, proof });
  const [did, publicKeyMultibase] = (proof.verificationMethod as string).split("#");
  const verificationMethod = {
    "@context": "https://w3id.org/security/multikey/v1",
    type: "Multikey",
    id: proof.verificationMethod,
    controller: did,
    publicKeyMultibase,
  };
  const verifier = await cryptosuite.createVerifier({ verificationMethod });
  return verifier.verify({ data, signature: base58.decode((proofValue as string).slice(1)) });
}

async function otherSigns(document: JsonObject, created: string): Promise<JsonObject> {
  const keys = await generate({ seed: mentor.secret });
  expect(`did:key:${keys.publicKeyMultibase}`).toBe(mentor.key);
  const cryptosuite = createSignCryptosuite();
  const proof = { ...proofConfig(mentor.key, created) };
  const data = await cryptosuite.createVerifyData({
    cryptosuite,
    document: structuredClone(document),
    proof,
  });
  return withProof(document, proof, await keys.signer().sign({ data }));
}

const created = "2026-11-27T19:31:00Z";

test("it is an implementation of this suite, and can say no", async () => {
  expect(createVerifyCryptosuite()).toMatchObject({ name: "eddsa-jcs-2022", requiredAlgorithm: "Ed25519" });
  expect(await otherVerifies(sample)).toBe(true);
  expect(await otherVerifies(changed(sample, ["validUntil"], "2029-01-10T09:30:00Z"))).toBe(false);
});

test.each(statements)("it verifies our signed $kind", async (statement) => {
  expect(await otherVerifies(await signedBy(mentor.secret, statement))).toBe(true);
});

test.each(statements)("we verify the $kind that it signs, byte for byte the same", async (statement) => {
  const theirs = await otherSigns(credentialOf(statement, identifier, programme), created);
  expect(checkProof(theirs, portable)).toBeUndefined();
  expect(checkProof(theirs, nodePrimitives)).toBeUndefined();
  expect(theirs).toEqual(await signedBy(mentor.secret, statement));
});

test("any statement: it hashes, signs and verifies alike", async () => {
  await fc.assert(
    fc.asyncProperty(anyStatement, async (statement) => {
      const document = credentialOf(statement, identifier, programme);
      const cryptosuite = createVerifyCryptosuite();
      const config = proofConfig(mentor.key, created);
      const theirs = await cryptosuite.createVerifyData({
        cryptosuite,
        document: structuredClone(document),
        proof: structuredClone(config),
      });
      expect(bytesToSign(document, config, portable)).toEqual(new Uint8Array(theirs));
      expect(await otherVerifies(await signedBy(mentor.secret, statement))).toBe(true);
      expect(checkProof(await otherSigns(document, created), nodePrimitives)).toBeUndefined();
    }),
    { numRuns: 40 },
  );
});

test("what was changed after signing neither verifies", async () => {
  const forged = changed(
    await signedBy(mentor.secret, signOff),
    ["credentialSubject", "result", 0, "value"],
    "may teach",
  );
  expect(await otherVerifies(forged)).toBe(false);
  expect(checkProof(forged, portable)?.code).toBe("signature");
});
