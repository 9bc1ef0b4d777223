import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalText } from "../../../src/engine/competency/libraries.ts";
import { largestFile, readJson, tooLarge } from "../../../src/engine/competency/strict-json.ts";

const problemOf = (text: string) => {
  const read = readJson(text);
  return read.ok ? undefined : read.problem;
};

test("whatever JSON says, with names given once, is read as JSON.parse reads it, and has a canonical form", () => {
  fc.assert(
    fc.property(
      fc.jsonValue({ stringUnit: "grapheme" }),
      fc.constantFrom(undefined, 2, "\t"),
      (value, space) => {
        const text = JSON.stringify(value, null, space);
        // fast-check draws the name __proto__ on purpose.
        if (text.includes("__proto__")) return;
        expect(readJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
        expect(canonicalText(JSON.parse(text))).toBe(
          canonicalText(JSON.parse(canonicalText(JSON.parse(text)))),
        );
      },
    ),
  );
});

test("any text at all is read or refused, and what is read is JSON", () => {
  const piece = fc.constantFrom(
    '"',
    "\\",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "a",
    '"a"',
    "1",
    "-",
    "e9",
    "\\u0061",
    " ",
    "null",
    "\ud800",
  );
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 20 }).map((pieces) => pieces.join("")),
      (text) => {
        const read = readJson(text);
        expect(read.ok ? JSON.parse(text) : read.problem.code).toEqual(read.ok ? read.value : "not-json");
      },
    ),
    { numRuns: 2000 },
  );
});

describe("refused as not-json", () => {
  test.each([
    ["nothing", ""],
    ["a text cut off", '{"a": [1, 2'],
    ["a name twice", '{"a": 1, "b": {"a": 2}, "a": 1}'],
    ["a name twice, once in escapes", '{"a": 1, "\\u0061": 1}'],
    ["a name twice within a list", '[[{"x": {}, "y": [], "x": 0}]]'],
    ["the empty name twice", '{"": 1, "": 1}'],
    ["__proto__", '{"__proto__": {"ok": true}}'],
    ["__proto__ in escapes", '{"a": [{"\\u005f_proto__": 1}]}'],
    ["half a letter", '"\ud83d"'],
    ["half a letter in escapes", '["\\ud83d"]'],
    ["half a letter in a name", '{"\\udc00": 1}'],
    ["two halves the wrong way round", '"\\ude00\\ud83d"'],
    ["a number without end", "[1e999]"],
    ["a negative one", "[-1e999]"],
    ["a comment", '{"a": 1} // more'],
    ["a byte order mark", "\ufeff{}"],
    ["two values", "{}{}"],
  ])("%s", (_, text) => {
    expect(problemOf(text)).toMatchObject({
      code: "not-json",
      message: expect.stringMatching(/again|as it was/),
    });
  });
});

describe("read", () => {
  test.each([
    ["the same name in two objects", '[{"a": 1}, {"a": {"a": 1}}]'],
    ["a name that is a value elsewhere", '{"a": "a", "b": ["a", "a"]}'],
    ["names of the language", '{"constructor": 1, "toString": 2, "hasOwnProperty": 3, "toJSON": 4}'],
    ["__proto__ as a value", '["__proto__", "\\u005f_proto__"]'],
    ["brackets and marks within texts", '{"a": "{\\"a\\": [", "b": "]\\\\", "c": "}"}'],
    ["a whole letter in escapes", '"\\ud83d\\ude00 \\\\ud83d"'],
    ["numbers at the edge", "[1.7976931348623157e308, 5e-324, -0, 1e-999]"],
  ])("%s", (_, text) => {
    expect(readJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
  });
});

test("a message names the line and what stands there", () => {
  expect(problemOf('{\n  "a": 1,\n  "a": 2\n}')!.message).toMatch(/^Line 3 has the name "a" twice/);
  expect(problemOf('{\n  "a": 1,\n  b\n}')!.message).toMatch(/stopped at line 3/);
});

test("64 brackets deep are read, 65 are not, nor a million", () => {
  const nested = (depth: number): string => "[".repeat(depth) + "]".repeat(depth);
  expect(readJson(nested(64)).ok).toBe(true);
  expect(readJson(`${'{"a":'.repeat(64)}1${"}".repeat(64)}`).ok).toBe(true);
  for (const text of [nested(65), nested(1_000_000), "[".repeat(1_000_000), '{"a":'.repeat(1_000_000)])
    expect(problemOf(text)?.code).toBe("too-large");
  expect(readJson(`[${"[],".repeat(1000)}[]]`).ok).toBe(true);
});

test("16 MiB are read, more is not looked at", () => {
  const text = (length: number): string => `"${"x".repeat(length - 2)}"`;
  expect(readJson(text(largestFile)).ok).toBe(true);
  expect(problemOf(text(largestFile + 1))?.code).toBe("too-large");
  expect(problemOf("[".repeat(100_000_000))).toEqual(tooLarge(100_000_000));
  expect(tooLarge(100_000_000).message).toContain("96 MiB, where 16 MiB");
});

test("long texts, many escapes and open ends are no trouble", () => {
  expect(readJson(`"${"\\n".repeat(4_000_000)}"`).ok).toBe(true);
  expect(problemOf('"\\'.repeat(4_000_000))?.code).toBe("not-json");
  expect(problemOf(`"${"\\u0061".repeat(2_000_000)}`)?.code).toBe("not-json");
  expect(readJson("9".repeat(300)).ok).toBe(true);
});
