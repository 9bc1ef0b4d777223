/** What no table of tests/reference/trade says of dimensions. */
import { expect, test } from "vitest";
import { dimensionsOf } from "../../../../src/engine/workshop/threads/dimensions.ts";
import { sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import { sizeOf } from "../ask.ts";
import { readTable } from "../table.ts";

test("ISO 273: no other size has a clearance hole", () => {
  const rows = readTable("iso273_clearance.csv");
  const listed = new Set(rows.map((row) => row.get("size")));
  const holes = sizesOf().filter((size) => dimensionsOf(size).clearanceHole !== undefined);
  expect(new Set(holes.map(({ size }) => size))).toEqual(listed);
  expect(holes.every(({ series }) => series === "ISO metric")).toBe(true);
});

test.each([
  // Common practice, from memory: drills of workshop charts, mm. They agree to 0.1 mm.
  ["0 BA", 5.1],
  ["2 BA", 4],
  ["4 BA", 3],
  ["6 BA", 2.3],
  ["8 BA", 1.8],
  ["1/4-20 UNC", 5.1],
  ["#10-32 UNF", 4.04],
  ["#6-32 UNC", 2.7],
  ["1/2-13 UNC", 10.72],
  ["1/4 in BSW", 5.1],
  ["1/4 in BSF", 5.35],
])("%s is tapped in a hole of about %s mm", (name, drill) => {
  expect(Math.abs(dimensionsOf(sizeOf(name)).tapDrill.diameterMm - drill)).toBeLessThanOrEqual(0.1 + 1e-9);
});

test("a tapping drill is wider than the root of the screw and narrower than its pitch diameter", () => {
  for (const size of sizesOf()) {
    const { tapDrill, minorDiameterMm, pitchDiameterMm } = dimensionsOf(size);
    expect(tapDrill.diameterMm, size.designation).toBeGreaterThan(minorDiameterMm - 0.05);
    expect(tapDrill.diameterMm, size.designation).toBeLessThan(pitchDiameterMm);
  }
});
