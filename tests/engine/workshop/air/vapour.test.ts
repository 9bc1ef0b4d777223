import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airNeeded, type Evaporation } from "../../../../src/engine/workshop/air/air-needed.ts";
import { parseLimit } from "../../../../src/engine/workshop/air/exposure-written.ts";
import { parseRoom } from "../../../../src/engine/workshop/air/room-written.ts";
import type { Substance } from "../../../../src/engine/workshop/air/substance.ts";
import { substanceIds, substanceNamed } from "../../../../src/engine/workshop/air/substances.ts";
import { type Spill, vapourOf } from "../../../../src/engine/workshop/air/vapour.ts";
import { roundedDown, roundedUp } from "../../../../src/engine/workshop/grounds.ts";
import { parseQuantity } from "../../../../src/engine/workshop/quantity.ts";
import { have, problemOf } from "../ask.ts";
import { expectNear } from "../table.ts";

const substance = (name: string): Substance => have(substanceNamed(name));

/** A substance of a worked example. Its lower limit is not part of the example and only has to be above the limit. */
function _example(molarMass: number, gravity: number): Substance {
  return {
    name: "example",
    molarMass,
    gravity,
    lowerLimit: 0.07,
    exposure: undefined,
    flashC: undefined,
    boilingC: undefined,
    source: "the example",
  };
}

const _litresPerHour = (text: string): number => have(parseQuantity(text, "flow")).base * 3.6e6;
const ppm = (amount: number) => ({ amount, unit: "ppm", name: "the example" }) as const;

/** By hand: 100 mL · 0.79 · 24.055 L/mol / 60.1 g/mol = 31.62 L; in 30 m³ 1054 ppm; 79 g / 30 m³ = 2633 mg/m³. */
test("100 mL of isopropanol in 30 m³", () => {
  const found = have(vapourOf({ substance: substance("isopropanol"), litres: 0.1, roomM3: 30, celsius: 20 }));
  expectNear(found.vapourL, 31.62, 0.001, "vapour");
  expectNear(found.ppm, 1054, 0.001, "ppm");
  expectNear(found.mgPerM3, 2633.4, 0.001, "mg/m³");
  expectNear(found.shareOfLowerLimit, 1054e-6 / 0.02, 0.001, "of the lower limit");
  expectNear(found.shareOfExposureLimit!, 1054 / 200, 0.001, "of the exposure limit");
  expectNear(found.flammableAirM3, 0.03162 / 0.02, 0.001, "flammable air");
  expect(found.category).toEqual({ category: 2, statement: "H225", signal: "Danger" });
});

const spills = fc.record({
  substance: fc.constantFrom(...substanceIds()).map(substance),
  litres: fc.double({ min: 0.001, max: 10, noNaN: true }),
  roomM3: fc.double({ min: 1, max: 1000, noNaN: true }),
  celsius: fc.double({ min: 0, max: 35, noNaN: true }),
});

describe("any spill", () => {
  test("more air, never more vapour in it; more liquid, never less", () => {
    fc.assert(
      fc.property(spills, fc.double({ min: 1, max: 10, noNaN: true }), (spill, times) => {
        const at = (changed: Partial<Spill>) => have(vapourOf({ ...spill, ...changed }));
        expect(at({ roomM3: spill.roomM3 * times }).ppm).toBeLessThanOrEqual(at({}).ppm);
        expect(at({ roomM3: spill.roomM3 * times }).shareOfExposureLimit!).toBeLessThanOrEqual(
          at({}).shareOfExposureLimit!,
        );
        expect(at({ litres: spill.litres * times }).shareOfLowerLimit).toBeGreaterThanOrEqual(
          at({}).shareOfLowerLimit,
        );
      }),
    );
  });

  test("the air needed for a limit, with the vapour of an hour in it, is at that limit", () => {
    fc.assert(
      fc.property(spills, ({ substance: solvent, litres, celsius }) => {
        const limit = solvent.exposure!;
        const air = have(airNeeded({ substance: solvent, litresPerHour: litres, limit, mixing: 1, celsius }));
        const { shareOfExposureLimit } = have(
          vapourOf({ substance: solvent, litres, roomM3: air.airM3PerHour, celsius }),
        );
        // Both are rounded up to four figures: at the limit to 0.2 %.
        expectNear(shareOfExposureLimit!, 1, 0.002, "share");
      }),
    );
  });

  test("a looser limit and better mixing never need more air", () => {
    fc.assert(
      fc.property(
        spills,
        fc.double({ min: 1, max: 5, noNaN: true }),
        ({ substance: solvent, litres, celsius }, times) => {
          const ask: Evaporation = {
            substance: solvent,
            litresPerHour: litres,
            limit: ppm(100),
            mixing: 5,
            celsius,
          };
          const air = (changed: Partial<Evaporation>) => have(airNeeded({ ...ask, ...changed })).airM3PerHour;
          expect(air({ limit: ppm(100 * times) })).toBeLessThanOrEqual(air({}));
          expect(air({ mixing: 5 / times })).toBeLessThanOrEqual(air({}));
        },
      ),
    );
  });
});

test("rounding keeps to its side, and adds no more than a unit of the last figure", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
      expect(roundedUp(value, 3)).toBeGreaterThanOrEqual(value);
      expect(roundedUp(value, 3)).toBeLessThanOrEqual(value * 1.0101);
      expect(roundedDown(value, 3)).toBeLessThanOrEqual(value);
      expect(roundedDown(value, 3)).toBeGreaterThanOrEqual(value * 0.9899);
    }),
  );
  expect([roundedUp(1000, 3), roundedDown(1000, 3), roundedUp(999.5, 3), roundedDown(999.5, 3)]).toEqual([
    1000, 1000, 1000, 999,
  ]);
});

describe("words", () => {
  const spill = (litres: number, roomM3: number) =>
    have(vapourOf({ substance: substance("acetone"), litres, roomM3, celsius: 20 }));

  test("who decides, what comes first, and that an average clears nothing", () => {
    expect(spill(0.1, 30).deferral).toMatch(
      /estimate.*safety data sheet and local rules decide.*safer substance.*less of it.*outdoors.*extraction.*never clears the air above a pan/,
    );
    expect(spill(0.1, 30).sources.join()).toContain("NIOSH");
  });

  test("warnings grow with the share of the lower limit", () => {
    expect(spill(5, 30).warnings.join()).toContain("the whole room can explode");
    expect(spill(1, 30).warnings.join()).toContain("a quarter");
    expect(spill(0.4, 30).warnings.join()).toContain("a tenth");
    expect(spill(0.01, 30).warnings.join()).not.toContain("lower flammable limit");
  });
});

describe("what is refused", () => {
  const sound: Spill = { substance: substance("acetone"), litres: 0.1, roomM3: 30, celsius: 20 };
  const wrong = [0, -1, Number.NaN, Number.POSITIVE_INFINITY];
  test.each(wrong)("%s as an amount, a room, a rate, a limit", (value) => {
    expect(problemOf(vapourOf({ ...sound, litres: value })).code).toBe("amount");
    expect(problemOf(vapourOf({ ...sound, roomM3: value })).code).toBe("room");
    const ask: Evaporation = {
      substance: sound.substance,
      litresPerHour: 1,
      limit: ppm(100),
      mixing: 5,
      celsius: 20,
    };
    expect(problemOf(airNeeded({ ...ask, litresPerHour: value })).code).toBe("rate");
    expect(problemOf(airNeeded({ ...ask, limit: ppm(value) })).code).toBe("limit");
    expect(problemOf(airNeeded({ ...ask, mixing: value })).code).toBe("mixing");
  });

  test("a limit that can burn, and one that is above what one may breathe", () => {
    const ask = { substance: sound.substance, litresPerHour: 1, mixing: 5, celsius: 20 };
    expect(problemOf(airNeeded({ ...ask, limit: ppm(25_000) })).expected).toBe(
      "a limit below the lower flammable limit",
    );
    expect(have(airNeeded({ ...ask, limit: ppm(7_000) })).warnings.join()).toMatch(
      /quarter.*one may breathe/,
    );
  });

  test.each(["20", "5 mm", "0 ppm", "-5 ppm", "ten ppm", "10 % of the upper limit"])(
    "%s as a limit",
    (text) => {
      expect(problemOf(parseLimit(text, "", 0.02)).code).toBe("limit");
    },
  );
});

test.each([
  ["30 m³", 30],
  ["4 m x 3 m x 2.5 m", 30],
  ["4 × 3 × 2.5 m", 30],
  ["10 x 10 x 10 ft", 28.316846592],
  ["30000 L", 30],
])("a room of %s", (text, size) => {
  expect(have(parseRoom(text))).toBeCloseTo(size, 9);
});

test.each(["4 m x 3 m", "0 m³", "4 x 0 x 3 m", "30", "-30 m³", "30 m²", "4 m x 3 m x 2.5", "axbxc"])(
  "no room of %s",
  (text) => {
    expect(problemOf(parseRoom(text)).expected).not.toBe("");
  },
);

test("limits as people write them", () => {
  expect(parseLimit("350 mg/m3", "x", 0.02)).toMatchObject({
    value: { amount: 350, unit: "mg/m³", name: "x" },
  });
  expect(parseLimit("0.02 %", "x", 0.02)).toMatchObject({ value: { amount: 200, unit: "ppm" } });
});
