import canonicalize from "canonicalize";
import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalText } from "../../../src/engine/competency/canonical.ts";
import type { Json } from "../../../src/engine/competency/json.ts";

test("as another implementation of RFC 8785 writes it, whatever the value", () => {
  fc.assert(
    fc.property(fc.jsonValue({ stringUnit: "grapheme", maxDepth: 6 }), (value) => {
      expect(canonicalText(value as Json)).toBe(canonicalize(value));
    }),
    { numRuns: 1000 },
  );
});

test("texts of every kind of letter, as names and as values", () => {
  const letter = fc.oneof(
    fc.integer({ min: 0, max: 0x24f }).map((code) => String.fromCharCode(code)),
    fc.constantFrom(
      "\u2028",
      "\u2029",
      "\ufeff",
      "\ue000",
      "\ufb33",
      "\u{1f600}",
      "\u{10ffff}",
      '"',
      "\\",
      "/",
    ),
  );
  const text = fc.array(letter, { maxLength: 8 }).map((letters) => letters.join(""));
  fc.assert(
    fc.property(fc.dictionary(text, text, { noNullPrototype: true }), (value) => {
      expect(canonicalText(value)).toBe(canonicalize(value));
      expect(JSON.parse(canonicalText(value))).toEqual(value);
    }),
    { numRuns: 1000 },
  );
});

test("numbers of every size", () => {
  // RFC 8785 appendix B: IEEE 754 in hexadecimal, and what becomes of it.
  const published: readonly (readonly [string, string])[] = [
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["4430000000000000", "295147905179352830000"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["44b52d02c7e14af6", "1e+23"],
    ["44b52d02c7e14af7", "1.0000000000000001e+23"],
    ["444b1ae4d6e2ef4f", "999999999999999900000"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
  ];
  for (const [bits, text] of published)
    expect(canonicalText(Buffer.from(bits, "hex").readDoubleBE())).toBe(text);
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(canonicalText(value)).toBe(canonicalize(value));
    }),
  );
});

test("what is no JSON has no canonical form", () => {
  for (const bad of [
    Number.NaN,
    Number.POSITIVE_INFINITY,
    "\ud800",
    ["\udc00"],
    { "\ud83d": 1 },
    [undefined],
    undefined,
    1n,
    () => 1,
  ])
    expect(() => canonicalText(bad as Json)).toThrow(TypeError);
});

test("a field that is undefined is left out", () => {
  expect(canonicalText({ b: undefined, a: 1 } as unknown as Json)).toBe('{"a":1}');
});
