/** Every row of the thread tables: dimensions by the formulas of the standards, within the rounding of the tables. */
import { describe, expect, test } from "vitest";
import { dimensionsOf } from "../../../../src/engine/workshop/threads/dimensions.ts";
import { sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import { sizeOf } from "../ask.ts";
import { figure, readTable } from "../table.ts";

/** Fails unless the two differ by no more than half a unit of so many decimals. */
function expectRounded(found: number, expected: number, decimals: number, what: string): void {
  expect(Math.abs(found - expected), `${what}: ${found} for ${expected}`).toBeLessThanOrEqual(
    0.5001 * 10 ** -decimals,
  );
}

describe("ISO 724, ISO 898-1 (formula), ISO 2306 (tapping drill, from memory)", () => {
  const rows = readTable("threads_iso_metric.csv");
  test.each(rows.map((row) => [row.get("designation")!, row] as const))("%s", (name, row) => {
    const found = dimensionsOf(sizeOf(name));
    expectRounded(found.pitchDiameterMm, figure(row, "d2"), 3, "d2");
    expectRounded(found.minorDiameterMm, figure(row, "d1_D1"), 3, "D1");
    expectRounded(found.rootDiameterMm!, figure(row, "d3"), 3, "d3");
    expectRounded(found.stressAreaMm2, figure(row, "As_exact"), 6, "As");
    expect(found.tapDrill.diameterMm).toBe(figure(row, "tap_drill"));
  });
});

describe("ASME B1.1; stress area by FED-STD-H28/2B", () => {
  const rows = readTable("threads_unified.csv");
  test.each(rows.map((row) => [`${row.get("size")}-${row.get("tpi")} ${row.get("series")}`, row] as const))(
    "%s",
    (name, row) => {
      const found = dimensionsOf(sizeOf(name));
      expectRounded(found.pitchDiameterMm / 25.4, figure(row, "d2_in"), 4, "d2");
      expectRounded(found.minorDiameterMm / 25.4, figure(row, "D1_in"), 4, "D1");
      expectRounded(found.stressAreaMm2 / 25.4 ** 2, figure(row, "As_in2_computed"), 5, "As");
      // As printed in handbooks (from memory): 3 or 4 figures.
      expect(
        Math.abs(found.stressAreaMm2 / 25.4 ** 2 / figure(row, "As_in2_published_memory") - 1),
      ).toBeLessThan(0.005);
      expect(found.clearanceHole).toBeUndefined();
    },
  );
});

describe("BS 93", () => {
  const rows = readTable("threads_ba.csv");
  test.each(rows.map((row) => [`${row.get("ba")} BA`, row] as const))("%s", (name, row) => {
    const found = dimensionsOf(sizeOf(name));
    // The standard gives the depth to 0.005 mm, and all from it.
    expect(found.pitchDiameterMm).toBeCloseTo(figure(row, "eff"), 9);
    expect(found.minorDiameterMm).toBeCloseTo(figure(row, "minor"), 9);
    expectRounded(found.stressAreaMm2, figure(row, "Atensile_eff_minor_mean_mm2"), 4, "As");
  });
});

describe("BS 84 (formula)", () => {
  const rows = readTable("threads_whitworth.csv");
  test.each(rows.map((row) => [`${row.get("size")} in ${row.get("series")}`, row] as const))(
    "%s",
    (name, row) => {
      const found = dimensionsOf(sizeOf(name));
      expectRounded(found.pitchDiameterMm / 25.4, figure(row, "effective_in"), 4, "effective");
      expectRounded(found.minorDiameterMm / 25.4, figure(row, "minor_in"), 4, "minor");
      expectRounded(found.stressAreaMm2 / 25.4 ** 2, figure(row, "As_in2"), 5, "As");
    },
  );
});

describe("ISO 273", () => {
  const rows = readTable("iso273_clearance.csv");
  test.each(rows.map((row) => [row.get("size")!, row] as const))("%s", (name, row) => {
    const expected = {
      fine: figure(row, "fine"),
      medium: figure(row, "medium"),
      coarse: figure(row, "coarse"),
    };
    const sizes = sizesOf(["ISO metric"]).filter(({ size }) => size === name);
    expect(sizes.length).toBeGreaterThan(0);
    for (const size of sizes) expect(dimensionsOf(size).clearanceHole).toEqual(expected);
  });

  test("no other size has one", () => {
    const listed = new Set(rows.map((row) => row.get("size")));
    const holes = sizesOf().filter((size) => dimensionsOf(size).clearanceHole !== undefined);
    expect(new Set(holes.map(({ size }) => size))).toEqual(listed);
    expect(holes.every(({ series }) => series === "ISO metric")).toBe(true);
  });
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
