import { expect, test } from "vitest";
import { dimensionsOf } from "../../../../src/engine/workshop/threads/dimensions.ts";
import { limitsOf } from "../../../../src/engine/workshop/threads/limits.ts";
import { sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import { inchSize } from "../../../../src/engine/workshop/threads/size.ts";
import { sizeOf } from "../ask.ts";

test("M6, 6g and 6H: ISO 965-2 (from memory)", () => {
  const limits = limitsOf(sizeOf("M6"));
  // The standard rounds tolerances to preferred numbers: 0.008 mm here at most.
  expect(Math.abs(limits.screwLeastMm - 5.794)).toBeLessThan(0.008);
  expect(Math.abs(limits.screwLeastPitchMm - 5.212)).toBeLessThan(0.008);
  expect(Math.abs(limits.nutGreatestPitchMm - 5.5)).toBeLessThan(0.008);
  expect(Math.abs(limits.nutGreatestMinorMm - 5.153)).toBeLessThan(0.008);
});

test("1.500-8 UN-2A: FED-STD-H28/2B, 90.1 (published)", () => {
  const limits = limitsOf(inchSize("UNC", "1 1/2", "1 1/2-8 UN", 1.5, 8));
  // Printed to 0.0001 and 0.001 in.
  expect(Math.abs(limits.screwLeastPitchMm / 25.4 - 1.4093)).toBeLessThan(0.0001);
  expect(Math.abs(limits.nutGreatestMinorMm / 25.4 - 1.39)).toBeLessThan(0.0005);
});

test("1/4-20 UNC, 2A and 2B: ASME B1.1 (from memory)", () => {
  const limits = limitsOf(sizeOf("1/4-20 UNC"));
  expect(Math.abs(limits.screwLeastMm / 25.4 - 0.2408)).toBeLessThan(0.0002);
  expect(Math.abs(limits.screwLeastPitchMm / 25.4 - 0.2127)).toBeLessThan(0.0002);
  expect(Math.abs(limits.nutGreatestPitchMm / 25.4 - 0.2224)).toBeLessThan(0.0002);
  expect(Math.abs(limits.nutGreatestMinorMm / 25.4 - 0.207)).toBeLessThan(0.0005);
});

test("in every size the threads still overlap at their limits", () => {
  for (const size of sizesOf()) {
    const limits = limitsOf(size);
    const { pitchDiameterMm, minorDiameterMm } = dimensionsOf(size);
    expect(limits.screwLeastMm, size.designation).toBeGreaterThan(limits.nutGreatestMinorMm);
    expect(limits.screwLeastMm, size.designation).toBeLessThan(size.diameterMm);
    expect(limits.screwLeastPitchMm, size.designation).toBeLessThan(pitchDiameterMm);
    expect(limits.nutGreatestPitchMm, size.designation).toBeGreaterThan(pitchDiameterMm);
    expect(limits.nutGreatestMinorMm, size.designation).toBeGreaterThan(minorDiameterMm);
  }
});
