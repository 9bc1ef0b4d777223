/** Statements for tests, one of each kind and any that there may be. Names and texts are invented. */
import fc from "fast-check";
import { signStatement } from "../../../src/engine/competency/credential.ts";
import { didKeyOf } from "../../../src/engine/competency/did-key.ts";
import { digestOfText } from "../../../src/engine/competency/digest.ts";
import type { JsonObject } from "../../../src/engine/competency/json.ts";
import { levels, outcomes } from "../../../src/engine/competency/levels.ts";
import { portable, publicKeyOf, signWith } from "../../../src/engine/competency/libraries.ts";
import type { NewKey, Observation, SignOff, Statement } from "../../../src/engine/competency/sign-off.ts";
import { listLength } from "../../../src/engine/competency/status-bits.ts";

export const identifier = "https://club.example/bench";
export const programme = "The Saturday bench";

const secretOf = (byte: number): Uint8Array => new Uint8Array(32).fill(byte);
const keyOf = (byte: number): string => didKeyOf(publicKeyOf(secretOf(byte)));

export const mentor = { secret: secretOf(1), key: keyOf(1) };
export const trainee = { secret: secretOf(2), key: keyOf(2) };
export const stranger = { secret: secretOf(3), key: keyOf(3) };

const digest = (text: string): string => digestOfText(text, portable);

const signed = {
  id: "urn:uuid:0b7f2a3c-5d1e-4f60-8a9b-1c2d3e4f5a6b",
  issuer: mentor.key,
  issuerName: "A. Mentor",
  subject: trainee.key,
  subjectName: "T. Learner",
  validFrom: "2026-11-27T19:30:00Z",
  validUntil: "2028-11-27T23:59:59Z",
  statusIndex: 94_567,
};
const release = { module: "let-down", title: "Let a spring down", revision: 3, content: digest("content") };

export const signOff: SignOff = {
  ...signed,
  ...release,
  kind: "sign-off",
  level: "alone",
  score: 0.8333,
  evidence: [
    { name: "Quiz, second sitting", digest: digest("quiz") },
    { name: "Watched on 20 November", digest: digest("observation") },
  ],
  words: "Sure hands; keeps the key on the arbor.",
};
export const observation: Observation = {
  ...signed,
  ...release,
  id: "urn:uuid:5c9f2a3c-5d1e-4f60-8a9b-1c2d3e4f5a6b",
  validUntil: undefined,
  kind: "observation",
  outcome: "not yet",
  phases: ["strip", "build"],
  words: "Not yet, because the brake was lifted before the key was on.",
  ticked: ["let-down", "board-off"],
};
export const newKey: NewKey = {
  ...signed,
  id: "urn:uuid:9d9f2a3c-5d1e-4f60-8a9b-1c2d3e4f5a6b",
  kind: "new-key",
  oldKey: stranger.key,
};
export const statements: readonly Statement[] = [signOff, observation, newKey];

/** As the mentor signs it. */
export const signedBy = (secret: Uint8Array, statement: Statement): Promise<JsonObject> =>
  signStatement(statement, {
    identifier,
    programme,
    primitives: portable,
    created: "2026-11-27T19:31:00Z",
    sign: async (message) => signWith(secret, message),
  });

const aText = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 40 })
  .filter((text) => text.trim() !== "");
const aDigest = fc.string().map(digest);
const anId = fc.stringMatching(/^[a-z][a-z0-9-]{0,12}$/);
const aTime = (from: string, to: string) =>
  fc.date({ min: new Date(from), max: new Date(to), noInvalidDate: true }).map((date) => date.toISOString());
const aKey = fc.uint8Array({ minLength: 32, maxLength: 32 }).map((secret) => didKeyOf(publicKeyOf(secret)));

const anySigned = {
  id: fc.uuid().map((id) => `urn:uuid:${id}`),
  issuer: fc.constant(mentor.key),
  issuerName: aText,
  subject: aKey,
  subjectName: aText,
  validFrom: aTime("2000-01-01T00:00:00Z", "2040-01-01T00:00:00Z"),
  validUntil: fc.option(aTime("2040-01-02T00:00:00Z", "2099-01-01T00:00:00Z"), { nil: undefined }),
  statusIndex: fc.nat(listLength - 1),
};
const anyRelease = {
  module: anId,
  title: aText,
  revision: fc.integer({ min: 1, max: 999_999_999 }),
  content: aDigest,
  words: fc.oneof(fc.constant(""), aText),
};

/** Any statement that a mentor may sign. */
export const anyStatement: fc.Arbitrary<Statement> = fc.oneof(
  fc.record({
    ...anySigned,
    ...anyRelease,
    kind: fc.constant("sign-off" as const),
    level: fc.constantFrom(...levels),
    score: fc.option(
      fc.nat(10_000).map((parts) => parts / 10_000),
      { nil: undefined },
    ),
    evidence: fc.array(fc.record({ name: aText, digest: aDigest }), { maxLength: 4 }),
  }),
  fc.record({
    ...anySigned,
    ...anyRelease,
    kind: fc.constant("observation" as const),
    outcome: fc.constantFrom(...outcomes),
    phases: fc.array(anId, { maxLength: 3 }),
    ticked: fc.array(anId, { maxLength: 5 }),
  }),
  fc.record({ ...anySigned, kind: fc.constant("new-key" as const), oldKey: aKey }),
);
