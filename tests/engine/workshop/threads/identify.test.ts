import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { identifyThread } from "../../../../src/engine/workshop/threads/identify.ts";
import { identificationGrounds } from "../../../../src/engine/workshop/threads/identify-words.ts";
import { limitsOf } from "../../../../src/engine/workshop/threads/limits.ts";
import { seriesNamed, sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import type { ThreadSize } from "../../../../src/engine/workshop/threads/size.ts";
import { twinsOf, twinWords } from "../../../../src/engine/workshop/threads/twins.ts";
import { sizeOf } from "../ask.ts";

const names = (found: ReturnType<typeof identifyThread>) =>
  found.candidates.map(({ size }) => size.designation);

const alike = (one: ThreadSize, other: ThreadSize) =>
  one.diameterMm === other.diameterMm && one.pitchMm === other.pitchMm;

/** A micrometer to 0.01 mm on a good crest, a pitch over twenty threads to 0.25 %: #2-56 and M2.2 are only 0.8 % apart. */
const measured = fc.record({
  size: fc.constantFrom(...sizesOf()),
  under: fc.double({ min: 0, max: 0.01, noNaN: true }),
  pitch: fc.double({ min: 0.9975, max: 1.0025, noNaN: true }),
});

describe("every tabled thread", () => {
  test("is found first from its own dimensions, beside none but what measures the same", () => {
    for (const size of sizesOf()) {
      const [first] = identifyThread(size).candidates;
      expect(first && alike(first.size, size), size.designation).toBe(true);
    }
  });

  test("is found first within measuring error, never a near twin", () => {
    fc.assert(
      fc.property(measured, ({ size, under, pitch }) => {
        const found = identifyThread({ diameterMm: size.diameterMm - under, pitchMm: size.pitchMm * pitch });
        expect(alike(found.candidates[0]!.size, size)).toBe(true);
        expect(names(found)).toContain(size.designation);
      }),
      { numRuns: 2000 },
    );
  });

  test("is found first and alone of its measure when the angle is known", () => {
    fc.assert(
      fc.property(measured, ({ size, under, pitch }) => {
        const { angle } = seriesNamed(size.series);
        const found = identifyThread({
          diameterMm: size.diameterMm - under,
          pitchMm: size.pitchMm * pitch,
          angle,
        });
        expect(names(found)[0]).toBe(size.designation);
      }),
      { numRuns: 1000 },
    );
  });

  test("is a candidate at any diameter that the tolerance of its standard allows", () => {
    const anywhere = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...sizesOf()), anywhere, (size, part) => {
        const least = limitsOf(size).screwLeastMm;
        const diameterMm = least + part * (size.diameterMm - least);
        expect(names(identifyThread({ diameterMm, pitchMm: size.pitchMm }))).toContain(size.designation);
      }),
      { numRuns: 2000 },
    );
  });

  test("is a candidate at the very least diameter, which of M2 is 5.6 % under nominal", () => {
    for (const size of sizesOf()) {
      const found = identifyThread({ diameterMm: limitsOf(size).screwLeastMm, pitchMm: size.pitchMm });
      expect(names(found), size.designation).toContain(size.designation);
    }
    // ISO 965-1, 13.1 and 13.3, worked by hand: 19.4 µm and 97.72 − 4.98 = 92.7 µm of 2 mm.
    expect(1 - limitsOf(sizeOf("M2")).screwLeastMm / 2).toBeCloseTo(0.0561, 4);
  });

  test("has candidates in order of nearness, none of them larger than measured by more than a caliper errs", () => {
    fc.assert(
      fc.property(measured, ({ size, under, pitch }) => {
        const { candidates } = identifyThread({
          diameterMm: size.diameterMm - under,
          pitchMm: size.pitchMm * pitch,
        });
        for (const one of candidates) {
          expect(one.diameterErrorMm).toBeLessThanOrEqual(0.03);
          expect(Math.abs(one.pitchErrorPart)).toBeLessThanOrEqual(0.04);
          expect(one.diameterErrorMm).toBeCloseTo(size.diameterMm - under - one.size.diameterMm, 12);
        }
      }),
    );
  });
});

test.each([
  [5.95, 1, ["M6", "0 BA"]],
  [4.66, 0.81, ["2 BA"]],
  [4.8, 25.4 / 32, ["#10-32 UNF"]],
  [6.3, 25.4 / 20, ["1/4-20 UNC", "1/4 in BSW"]],
  [6.3, 25.4 / 26, ["1/4 in BSF"]],
  [4.12, 25.4 / 32, ["#8-32 UNC"]],
])("a screw of %s mm and pitch %s mm", (diameterMm, pitchMm, expected) => {
  expect(names(identifyThread({ diameterMm, pitchMm })).slice(0, expected.length)).toEqual(expected);
});

test("the angle tells what diameter and pitch can't", () => {
  expect(names(identifyThread({ diameterMm: 5.95, pitchMm: 1, angle: 47.5 }))).toEqual(["0 BA"]);
  expect(names(identifyThread({ diameterMm: 6.3, pitchMm: 1.27, angle: 55 }))).toEqual(["1/4 in BSW"]);
  expect(identificationGrounds(identifyThread({ diameterMm: 5.95, pitchMm: 1 })).warnings[0]).toContain(
    "only the angle",
  );
});

describe("what fits nothing", () => {
  test.each([
    [10, 3],
    [6.1, 1.05],
    [5.95, 1.15],
    [1e-9, 1],
    [1e300, 1e-300],
  ])("%s mm and %s mm", (diameterMm, pitchMm) => {
    const found = identifyThread({ diameterMm, pitchMm });
    expect(found.candidates).toEqual([]);
    expect(found.nearest).toHaveLength(3);
    expect(identificationGrounds(found).warnings.join()).toMatch(
      /None of these fits: do not re-tap.*left-hand.*wood.*maker's own.*damaged/,
    );
  });

  test("the nearest is the one that looks alike", () => {
    expect(identifyThread({ diameterMm: 6.1, pitchMm: 1.05 }).nearest[0]!.size.designation).toBe("M6");
  });
});

describe("near twins", () => {
  // Pairs that the trade knows; common practice.
  test.each([
    ["0 BA", "M6"],
    ["2 BA", "#10-32 UNF"],
    ["4 BA", "#6-40 UNF"],
    ["6 BA", "#4-48 UNF"],
    ["M5", "#10-32 UNF"],
    ["1/4 in BSF", "1/4-28 UNF"],
    ["5/16 in BSF", "5/16-24 UNF"],
    ["3/16 in BSF", "#10-32 UNF"],
    ["1/2 in BSW", "1/2-13 UNC"],
    ["1/4 in BSW", "1/4-20 UNC"],
    ["5/16 in BSW", "5/16-18 UNC"],
    ["3/8 in BSW", "3/8-16 UNC"],
    ["7/16 in BSW", "7/16-14 UNC"],
  ])("%s and %s, either way", (one, other) => {
    const twins = (name: string) => twinsOf(sizeOf(name)).map(({ other: twin }) => twin.designation);
    expect(twins(one)).toContain(other);
    expect(twins(other)).toContain(one);
  });

  test("what is far apart is no twin", () => {
    expect(twinsOf(sizeOf("M6")).map(({ other }) => other.designation)).toEqual(["0 BA"]);
    expect(twinsOf(sizeOf("3/8 in BSF"))).toEqual([]);
  });

  test("the words say how they differ", () => {
    expect(twinWords(twinsOf(sizeOf("M6"))[0]!)).toBe(
      "M6 and 0 BA must not be mixed: the same diameter, 6 mm; the same pitch, 1 mm; flanks of 60° against 47.5°. One enters the other for a few turns, binds or sits loose, and spoils both.",
    );
    const twin = twinsOf(sizeOf("2 BA")).find(({ other }) => other.designation === "#10-32 UNF");
    expect(twinWords(twin!)).toContain(
      "diameter 4.7 mm against 4.826 mm; pitch 0.81 mm against 0.7937 mm; flanks of 47.5° against 60°",
    );
  });

  test("an identification warns of each pair once", () => {
    const { warnings } = identificationGrounds(identifyThread({ diameterMm: 5.95, pitchMm: 1 }));
    expect(warnings.filter((warning) => warning.includes("must not be mixed"))).toHaveLength(1);
  });
});
