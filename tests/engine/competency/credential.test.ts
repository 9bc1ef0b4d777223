import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { credentialOf, readCredential } from "../../../src/engine/competency/credential.ts";
import type { Json, JsonObject } from "../../../src/engine/competency/json.ts";
import { portable } from "../../../src/engine/competency/libraries.ts";
import { checkProof } from "../../../src/engine/competency/proof.ts";
import { changed, referenceJson, sample } from "./reference.ts";
import { badgeFaults, credentialFaults } from "./schemas.ts";
import {
  anyStatement,
  identifier,
  mentor,
  observation,
  programme,
  signedBy,
  signOff,
  statements,
  stranger,
} from "./statements.ts";

describe("the schemas of Open Badges 3.0 and VC 2.0", () => {
  test("find the sample sign-off sound, and faults where there are some", () => {
    expect([...badgeFaults(sample), ...credentialFaults(sample)]).toEqual([]);
    expect(
      badgeFaults(changed(sample, ["credentialSubject", "achievement", "criteria"], undefined)),
    ).not.toEqual([]);
    expect(badgeFaults(changed(sample, ["validUntil"], "2028-01-10"))).not.toEqual([]);
    expect(credentialFaults(changed(sample, ["proof", 0, "verificationMethod"], 3))).not.toEqual([]);
  });

  test.each(statements)("are met by a signed $kind", async (statement) => {
    const credential = await signedBy(mentor.secret, statement);
    expect(badgeFaults(credential)).toEqual([]);
    expect(credentialFaults(credential)).toEqual([]);
  });

  test("are met by any statement", async () => {
    await fc.assert(
      fc.asyncProperty(anyStatement, async (statement) => {
        const credential = await signedBy(mentor.secret, statement);
        expect([...badgeFaults(credential), ...credentialFaults(credential)]).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

test("what a statement says is read back from its credential, signed or not, and the proof fits", async () => {
  await fc.assert(
    fc.asyncProperty(anyStatement, async (statement) => {
      const unsigned = credentialOf(statement, identifier, programme);
      expect(readCredential(unsigned, identifier)).toEqual({ ok: true, statement });
      const credential = await signedBy(mentor.secret, statement);
      expect(readCredential(credential, identifier)).toEqual({ ok: true, statement });
      expect(checkProof(credential, nodePrimitives)).toBeUndefined();
    }),
    { numRuns: 60 },
  );
});

/** Every field name of the value. */
function namesIn(value: Json): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  const own = Array.isArray(value) ? [] : Object.keys(value);
  return [...own, ...Object.values(value).flatMap(namesIn)];
}

test("every field is a term of the contexts that are named", async () => {
  const terms = new Set(
    ["credentials-v2", "ob-v3p0-context-3.0.3"].flatMap((name) =>
      namesIn(referenceJson(`contexts/${name}.json`)),
    ),
  );
  const names = (await Promise.all(statements.map((one) => signedBy(mentor.secret, one)))).flatMap(namesIn);
  expect(names.filter((name) => !terms.has(name) && name !== "@context")).toEqual([]);
  expect(names).toContain("digestMultibase");
});

test.each(statements)(
  "a $kind that was signed by the first version, and kept since, is still good",
  (statement) => {
    const path = new URL(`kept/${statement.kind}.vc.json`, import.meta.url);
    const kept = JSON.parse(readFileSync(path, "utf8")) as JsonObject;
    expect(checkProof(kept, portable)).toBeUndefined();
    expect(readCredential(kept, identifier)).toEqual({ ok: true, statement });
  },
);

test("words for people may change from one version to the next", () => {
  const credential = credentialOf(signOff, identifier, programme);
  const reworded = changed(credential, ["credentialSubject", "achievement", "description"], "Other words");
  expect(readCredential(reworded, identifier)).toEqual({ ok: true, statement: signOff });
});

test("a score is kept to a hundredth of a percent", () => {
  const read = readCredential(credentialOf({ ...signOff, score: 2 / 3 }, identifier, programme), identifier);
  expect(read.ok && read.statement.kind === "sign-off" && read.statement.score).toBe(0.6667);
});

const subject = "credentialSubject";
/** Each a change of a sound credential, the code with which it is refused, and the place. */
const refused: readonly (readonly [
  name: string,
  path: readonly (string | number)[],
  to: Json | undefined,
  code: string,
  at: string,
])[] = [
  ["a context more", ["@context", 2], "https://club.example/terms", "context", "@context"],
  [
    "contexts in another order",
    ["@context"],
    [...(sample["@context"] as string[])].reverse(),
    "context",
    "@context[0]",
  ],
  ["no id", ["id"], undefined, "schema", "id"],
  ["an id that is no UUID", ["id"], "urn:uuid:1", "schema", "id"],
  ["a type missing", ["type"], ["VerifiableCredential"], "schema", "type"],
  ["an issuer that is a text", ["issuer"], mentor.key, "schema", "issuer.id"],
  ["an issuer without name", ["issuer", "name"], " ", "schema", "issuer.name"],
  ["a trainee who is no key", [subject, "id"], "mailto:t@club.example", "schema", `${subject}.id`],
  ["a hashed name", [subject, "identifier", 0, "hashed"], true, "schema", `${subject}.identifier[0].hashed`],
  ["a day that is none", ["validFrom"], "2026-02-30T00:00:00Z", "schema", "validFrom"],
  ["a time without zone", ["validFrom"], "2026-11-27T19:30:00", "schema", "validFrom"],
  ["an end before the beginning", ["validUntil"], "2026-11-27T19:29:59Z", "schema", "validUntil"],
  ["an end that is no time", ["validUntil"], "never", "schema", "validUntil"],
  [
    "another programme",
    [subject, "achievement", "id"],
    "https://other.example/modules/let-down/revisions/3",
    "schema",
    `${subject}.achievement.id`,
  ],
  [
    "a revision that does not fit the address",
    [subject, "achievement", "version"],
    "4",
    "schema",
    `${subject}.achievement.version`,
  ],
  [
    "revision 0",
    [subject, "achievement", "id"],
    `${identifier}/modules/let-down/revisions/0`,
    "schema",
    `${subject}.achievement.id`,
  ],
  ["a level that there is not", [subject, "result", 0, "value"], "master", "schema", `${subject}.result`],
  ["a score beyond 100", [subject, "result", 1, "value"], "101", "schema", `${subject}.result`],
  ["a third result", [subject, "result", 2], { type: ["Result"], value: "x" }, "schema", `${subject}.result`],
  ["a content digest of another kind", ["evidence", 0, "digestMultibase"], "zQm", "schema", "evidence"],
  ["no evidence", ["evidence"], undefined, "schema", "evidence"],
  [
    "a status list of someone else",
    ["credentialStatus", "statusListCredential"],
    `${identifier}/withdrawals/${stranger.key}`,
    "schema",
    "credentialStatus.statusListCredential",
  ],
  [
    "a place beyond the list",
    ["credentialStatus", "statusListIndex"],
    "131072",
    "status-list",
    "credentialStatus.statusListIndex",
  ],
  [
    "a place written oddly",
    ["credentialStatus", "statusListIndex"],
    "094567",
    "status-list",
    "credentialStatus.statusListIndex",
  ],
  ["no status", ["credentialStatus"], undefined, "status-list", "credentialStatus.statusListIndex"],
  [
    "a purpose that can be taken back",
    ["credentialStatus", "statusPurpose"],
    "suspension",
    "schema",
    "credentialStatus.statusPurpose",
  ],
];

test.each(refused)("refused: %s", (_, path, to, code, at) => {
  const read = readCredential(changed(credentialOf(signOff, identifier, programme), path, to), identifier);
  expect(read.ok ? undefined : read.problem).toMatchObject({
    code,
    at,
    message: expect.stringMatching(/^Expected .+; found /),
  });
});

test.each([[null], [3], ["text"], [[]], [{}], [{ credentialSubject: { achievement: [] } }]])(
  "refused: %j",
  (json) => {
    const read = readCredential(json, identifier);
    expect(read.ok ? undefined : read.problem.code).toBe("schema");
  },
);

test("what could not be read back is not signed", async () => {
  const bad = { ...observation, phases: ["a, b"] };
  await expect(signedBy(mentor.secret, bad)).rejects.toThrow(RangeError);
  await expect(signedBy(mentor.secret, { ...signOff, subjectName: "" })).rejects.toThrow(
    "the trainee's name",
  );
});

test("a credential of another mentor's hand does not verify", async () => {
  const credential = await signedBy(stranger.secret, signOff);
  expect(checkProof(credential, portable)?.code).toBe("signature");
});
