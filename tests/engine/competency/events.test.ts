/** Events and files as they are written. Ids and seeds are worked out again by Node's own SHA-256, from the texts that the design names. */
import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { makeEvent, paperSeed, readEvent } from "../../../src/engine/competency/events.ts";
import type { Json } from "../../../src/engine/competency/json.ts";
import { portable } from "../../../src/engine/competency/libraries.ts";
import { person, recordText } from "../../support/competency.ts";

/** `u` and base64url of 0x12 0x20 and the SHA-256 of a text. */
const digest = (text: string): string =>
  `u${Buffer.concat([Buffer.of(0x12, 0x20), createHash("sha256").update(text).digest()]).toString("base64url")}`;

const at = "2026-05-01T18:00:00.000Z";
const hazard = makeEvent({ kind: "hazard", at, hazard: "spring" }, portable);

test("the id of an event is the digest of its canonical JSON without the id", () => {
  expect(hazard.id).toBe(digest(`{"at":"${at}","hazard":"spring","kind":"hazard"}`));
});

test("the seed of a paper is the digest of owner, quiz and number", () => {
  const quiz = digest("a quiz");
  expect(paperSeed("did:key:z6Mk", quiz, 2, portable)).toBe(digest(`did:key:z6Mk ${quiz} 2`));
});

describe("an event", () => {
  const read = (json: unknown) => readEvent(json as Json, portable);
  const practice = {
    kind: "practice",
    ...{ at, module: "motor", revision: 1, graph: digest("g"), practice: "order", given: ["a"] },
    claimed: { right: true },
  };

  test("is read as it was made", () => {
    expect(read(JSON.parse(JSON.stringify(hazard)))).toEqual({ ok: true, event: hazard });
  });

  test.each([
    ["no object", [], "expected an object"],
    ["no kind", { at }, "expected one of read, hazard"],
    ["a kind from the language", { ...hazard, kind: "constructor" }, "expected one of read, hazard"],
    ["a field too many", { ...hazard, mood: "good" }, 'a field "mood"'],
    ["a field too few", { kind: "hazard", at, id: hazard.id }, '"hazard" of a hazard event is nothing'],
    ["a revision that is none", { ...practice, revision: 1.5, id: hazard.id }, '"revision"'],
    ["a list with something else in it", { ...practice, given: ["a", 1], id: hazard.id }, '"given"'],
    [
      "a claim with more in it",
      { ...practice, claimed: { right: true, very: true }, id: hazard.id },
      '"claimed"',
    ],
    ["a digest of another kind", { ...practice, graph: "uEi", id: hazard.id }, '"graph"'],
    ["more steps than there can be", { ...practice, given: Array(1001).fill("a"), id: hazard.id }, '"given"'],
  ])("with %s is refused, with words", (_, json, words) => {
    const result = read(json);
    expect(result).toMatchObject({ ok: false, problem: { code: "schema" } });
    expect(result.ok ? "" : result.problem.message).toContain(words);
  });

  test("that was changed has another id", () => {
    expect(read({ ...hazard, hazard: "solvent" })).toMatchObject({
      ok: false,
      problem: { code: "event-id" },
    });
  });

  test("is not made where it could not be read back", () => {
    expect(() => makeEvent({ kind: "hazard", at: "yesterday", hazard: "spring" }, portable)).toThrow(
      RangeError,
    );
  });
});

test("a file bears its events by time, whatever the order in which they are given", async () => {
  const later = makeEvent({ kind: "hazard", at: "2026-05-02T18:00:00.000Z", hazard: "spring" }, portable);
  const jo = person("Jo");
  expect(await recordText(jo, [later, hazard, later])).toBe(await recordText(jo, [hazard, later]));
});
