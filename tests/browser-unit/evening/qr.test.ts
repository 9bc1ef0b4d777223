import { encode } from "uqr";
import { describe, expect, test } from "vitest";
import { pathOf } from "../../../src/browser/evening/qr.ts";

/** Dark squares of a path, as "x y". */
const squaresOf = (path: string): Set<string> =>
  new Set([...path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x} ${y}`));

describe("a code on the evening sheet", () => {
  const { data, size, version } = encode("https://club.example/desk/index.html#did:key:z6Mk", {
    ecc: "M",
    border: 4,
  });
  const squares = squaresOf(pathOf(data));

  test("has its finder patterns and the quiet zone of ISO/IEC 18004: four modules wide", () => {
    // Section 6.1: a symbol has 17 + 4 · version modules each way; 6.3.3: a finder is seven modules wide, with a ring of light.
    expect(size).toBe(17 + 4 * version + 8);
    const row = (y: number, from: number) =>
      Array.from({ length: 8 }, (_, at) => (squares.has(`${from + at} ${y}`) ? "#" : ".")).join("");
    expect([4, 5, 6, 7].map((y) => row(y, 4))).toEqual(["#######.", "#.....#.", "#.###.#.", "#.###.#."]);
    const far = size - 4 - 7;
    expect(row(4, far)).toMatch(/^#{7}\./);
    expect(row(far, 4)).toBe("#######.");
    expect(
      [...squares].filter((each) => each.split(" ").some((at) => Number(at) < 4 || Number(at) >= size - 4)),
    ).toEqual([]);
  });
});
