import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gunzip as gunzipInBrowser } from "../../../src/browser/record/gunzip.ts";
import { gunzip, gzip } from "../../../src/cli/gzip.ts";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import { statusListId } from "../../../src/engine/competency/credential.ts";
import type { Json, JsonObject } from "../../../src/engine/competency/json.ts";
import { base64url, signWith } from "../../../src/engine/competency/libraries.ts";
import { signDocument } from "../../../src/engine/competency/proof.ts";
import { listLength } from "../../../src/engine/competency/status-bits.ts";
import {
  bitsOf,
  makeStatusList,
  placesIn,
  readStatusList,
  unpacked,
} from "../../../src/engine/competency/status-list.ts";
import { changed, referenceJson } from "./reference.ts";
import { credentialFaults } from "./schemas.ts";
import { identifier, mentor, stranger } from "./statements.ts";

const signing = {
  primitives: nodePrimitives,
  created: "2026-11-27T19:31:00Z",
  sign: async (message: Uint8Array) => signWith(mentor.secret, message),
};
const listed = (places: Iterable<number>): Promise<JsonObject> =>
  makeStatusList({
    issuer: mentor.key,
    id: statusListId(identifier, mentor.key),
    bits: bitsOf(places),
    validFrom: "2026-11-27T19:30:00Z",
    validUntil: "2027-05-27T23:59:59Z",
    gzip,
    ...signing,
  });
const read = (json: Json) => readStatusList(json, { primitives: nodePrimitives, gunzip });

const encodedIn = (list: JsonObject): string =>
  (list.credentialSubject as { encodedList: string }).encodedList;

describe.each([
  ["Node", gunzip],
  ["the browser", gunzipInBrowser],
])("reference lists unpacked as in %s", (_, unpack) => {
  test("example 3 of Bitstring Status List 1.0 has 131,072 bits, none set", async () => {
    const bits = await unpacked(
      encodedIn(referenceJson("bitstring-status-list/spec-example-3.json")),
      unpack,
    );
    expect(bits).toEqual(new Uint8Array(16_384));
  });

  test("a list that was made elsewhere has its three bits", async () => {
    const reference = referenceJson("bitstring-status-list/own-three-bits.json");
    const bits = await unpacked(reference.encodedList as string, unpack);
    expect(bits).toHaveLength(reference.bytes as number);
    expect(placesIn(bits!)).toEqual(reference.setIndexes);
    expect(bits).toEqual(bitsOf(reference.setIndexes as number[]));
  });

  test("what unpacks to more than a list is not unpacked", async () => {
    const large = gzipSync(new Uint8Array(20_000_000));
    expect(await unpacked(`u${base64url.encode(large)}`, unpack)).toBeUndefined();
    expect(await unpacked(`u${base64url.encode(gzipSync(new Uint8Array(16_385)))}`, unpack)).toBeUndefined();
  });

  test("nor what is no gzip, cut off, or in another encoding", async () => {
    const sound = encodedIn(await listed([1]));
    const packed = base64url.decode(sound.slice(1));
    for (const bad of [
      "u",
      "uAAAA",
      `z${sound.slice(1)}`,
      `${sound}=`,
      `u${base64url.encode(packed.slice(0, -9))}`,
    ])
      expect(await unpacked(bad, unpack)).toBeUndefined();
    expect(await unpacked(sound, unpack)).toHaveLength(16_384);
  });
});

test("a list says of each place what was put there", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.nat(listLength - 1), { maxLength: 20 }),
      fc.nat(listLength - 1),
      async (places, other) => {
        const result = await read(await listed(places));
        expect(result.ok && placesIn(result.list.bits)).toEqual([...places].sort((a, b) => a - b));
        expect(result.ok && result.list.isSet(other)).toBe(places.includes(other));
      },
    ),
    { numRuns: 30 },
  );
});

test("a place that the list does not have counts as withdrawn", async () => {
  const result = await read(await listed([]));
  expect(
    [-1, listLength, 0.5, Number.NaN, 2 ** 40].map((place) => result.ok && result.list.isSet(place)),
  ).toEqual(Array(5).fill(true));
  expect(result.ok && result.list.isSet(listLength - 1)).toBe(false);
  expect(() => bitsOf([listLength])).toThrow(RangeError);
});

test("a list meets the schema of VC 2.0, and says whose it is and how long it holds", async () => {
  const list = await listed([3]);
  expect(credentialFaults(list)).toEqual([]);
  expect(await read(list)).toMatchObject({
    ok: true,
    list: {
      issuer: mentor.key,
      id: `${identifier}/withdrawals/${mentor.key}`,
      validFrom: "2026-11-27T19:30:00Z",
      validUntil: "2027-05-27T23:59:59Z",
    },
  });
});

const refused: readonly (readonly [string, readonly (string | number)[], Json | undefined])[] = [
  ["changed after signing", ["validUntil"], "2037-05-27T23:59:59Z"],
  ["of another issuer", ["issuer"], stranger.key],
  ["with another context", ["@context", 1], "https://club.example/terms"],
  ["without end", ["validUntil"], undefined],
  ["with its dates reversed", ["validUntil"], "2025-11-27T19:30:00Z"],
  ["with times without zone", ["validFrom"], "2026-11-27T19:30:00"],
  ["for another purpose", ["credentialSubject", "statusPurpose"], "suspension"],
  ["with two proofs", ["proof", 1], {}],
  ["unsigned", ["proof"], undefined],
];

test.each(refused)("refused: a list %s", async (_, path, to) => {
  const result = await read(changed(await listed([3]), path, to));
  expect(result.ok ? undefined : result.problem.code).toBe("status-list");
});

test.each([
  ["no list", null],
  ["a text", "x"],
  ["nothing", {}],
])("refused: %s", async (_, json) => {
  const result = await read(json);
  expect(result.ok ? undefined : result.problem.code).toBe("status-list");
});

test("refused: a list that is too short, although it is signed", async () => {
  const encodedList = `u${base64url.encode(gzipSync(new Uint8Array(16_383)))}`;
  const { proof: _, ...unsigned } = changed(
    await listed([3]),
    ["credentialSubject", "encodedList"],
    encodedList,
  );
  const signed = await signDocument(
    { ...unsigned, "@context": unsigned["@context"] as string[] },
    mentor.key,
    signing,
  );
  const result = await read(signed);
  expect(result.ok ? undefined : result.problem.message).toContain("131072 bits");
});
