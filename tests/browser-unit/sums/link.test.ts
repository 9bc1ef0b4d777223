import fc from "fast-check";
import { expect, test } from "vitest";
import { queryOf, valuesOf } from "../../../src/browser/sums/link.ts";

test("what is filled in comes back from its link", () => {
  const names = fc.stringMatching(/^[a-z][a-z-]{0,8}$/);
  const values = fc.map(
    names,
    fc.string({ minLength: 1, maxLength: 40 }).filter((text) => text.trim() !== ""),
    {
      minKeys: 1,
      maxKeys: 4,
    },
  );
  fc.assert(
    fc.property(fc.map(names, values, { maxKeys: 4 }), (filled) => {
      expect(valuesOf(queryOf(filled))).toEqual(filled);
    }),
  );
});

test("signs of the trade survive", () => {
  const filled = new Map([
    [
      "torque",
      new Map([
        ["torque", "8 lbf·in"],
        ["thread", '1/4" BSF & 5 % + #8'],
      ]),
    ],
  ]);
  expect(valuesOf(queryOf(filled))).toEqual(filled);
});

test("empty fields are left out; nothing filled in is no query", () => {
  expect(queryOf(new Map([["thread", new Map([["thread", "  "]])]]))).toBe("");
  expect(
    queryOf(
      new Map([
        [
          "a",
          new Map([
            ["x", "1"],
            ["y", ""],
          ]),
        ],
      ]),
    ),
  ).toBe("?a.x=1");
});

test("what an address names otherwise is left out, and nothing is longer than a field takes", () => {
  const read = valuesOf(`?q=x&a.b.c=1&__proto__.x=1&A.b=2&a.x=1&a.x=2&a.y=${"z".repeat(500)}`);
  expect([...read.keys()]).toEqual(["a"]);
  expect(read.get("a")!.get("x")).toBe("1");
  expect(read.get("a")!.get("y")).toHaveLength(200);
});
