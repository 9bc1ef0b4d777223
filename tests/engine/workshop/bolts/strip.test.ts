import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bearingOf } from "../../../../src/engine/workshop/bolts/bearing.ts";
import { materialNamed, materials } from "../../../../src/engine/workshop/bolts/materials.ts";
import { shearAreasPerLength } from "../../../../src/engine/workshop/bolts/shear-area.ts";
import { strengthOf } from "../../../../src/engine/workshop/bolts/strength.ts";
import { type Engagement, stripping } from "../../../../src/engine/workshop/bolts/strip.ts";
import { pullOf } from "../../../../src/engine/workshop/bolts/tighten.ts";
import { stressAreaMm2 } from "../../../../src/engine/workshop/threads/dimensions.ts";
import { sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import { have, problemOf, sizeOf } from "../ask.ts";
import { expectNear } from "../table.ts";

function engagement(
  thread: string,
  engagementMm: number,
  material: string,
  screw: string,
  friction = 0.1,
): Engagement {
  const size = sizeOf(thread);
  return {
    ...{ size, engagementMm, friction, bearing: bearingOf(size) },
    material: have(materialNamed(material)),
    screw: have(strengthOf(screw, size.diameterMm)),
  };
}

describe("FED-STD-H28/2B, Appendix B", () => {
  // 1.500-8 UN-2A, in inches; dmin and D2max by ASME B1.1 are not needed for the external thread.
  const pair = {
    ...{ pitchMm: 1 / 8, angle: 60, screwLeastMm: 1.4828, nutGreatestPitchMm: 1.4283 },
    ...{ screwLeastPitchMm: 1.4093, nutGreatestMinorMm: 1.39 },
  };

  test("the formulas as printed, with 0.57735 for tan 30°", () => {
    const { internal, external } = shearAreasPerLength(pair);
    const n = 8;
    expectNear(internal, Math.PI * n * 1.4828 * (1 / (2 * n) + 0.57735 * (1.4828 - 1.4283)), 1e-6, "ASn");
    expectNear(external, Math.PI * n * 1.39 * (1 / (2 * n) + 0.57735 * (1.4093 - 1.39)), 1e-6, "ASs");
  });
});

describe("materials", () => {
  test("usual names, and the nearest of what is not known", () => {
    expect(have(materialNamed("Zamak 3")).id).toBe("zinc-3");
    expect(have(materialNamed("aluminum")).id).toBe("aluminium-356");
    expect(problemOf(materialNamed("bras")).nearest).toBe("brass");
    expect(problemOf(materialNamed("constructor")).code).toBe("unknown-material");
  });
});

const asks = fc.record({
  thread: fc.constantFrom(...sizesOf().filter(({ diameterMm }) => diameterMm <= 16)),
  length: fc.double({ min: 0.1, max: 50, noNaN: true }),
  material: fc.constantFrom(...materials().map(({ id }) => id)),
  screw: fc.constantFrom("4.6", "8.8", "12.9", "A2-70", "brass"),
});

describe("any engagement", () => {
  test("more of it is never weaker, and needs no more of itself", () => {
    fc.assert(
      fc.property(
        asks,
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        ({ thread, length, material, screw }, more) => {
          const [short, long] = [length, length + more].map((one) =>
            have(stripping(engagement(thread.designation, one, material, screw))),
          );
          const least = (loads: Readonly<Record<string, number>>) => Math.min(...Object.values(loads));
          expect(least(long!.loads)).toBeGreaterThanOrEqual(least(short!.loads));
          expect(long!.whenTightened.torqueNm).toBeGreaterThanOrEqual(short!.whenTightened.torqueNm);
          expect(long!.engagementNeededMm).toBe(short!.engagementNeededMm);
        },
      ),
    );
  });

  test("at the engagement needed the screw breaks, a little below it a thread strips", () => {
    fc.assert(
      fc.property(asks, ({ thread, material, screw }) => {
        const at = (length: number) =>
          have(stripping(engagement(thread.designation, length, material, screw)));
        const { engagementNeededMm } = at(1);
        expect(at(engagementNeededMm * 1.001).weaker).toBe("screw breaks");
        expect(at(engagementNeededMm * 0.999).weaker).not.toBe("screw breaks");
      }),
    );
  });

  test("the torque is the one that pulls so hard", () => {
    fc.assert(
      fc.property(asks, ({ thread, length, material, screw }) => {
        const ask = engagement(thread.designation, length, material, screw);
        const { torqueNm, loadN } = have(stripping(ask)).whenTightened;
        const lubrication = { kind: "friction", thread: 0.1, head: 0.1 } as const;
        const joint = { size: ask.size, strength: ask.screw, lubrication, bearing: ask.bearing, used: false };
        expectNear(have(pullOf(joint, torqueNm)).preloadN, loadN, 1e-9, "pull");
      }),
    );
  });

  test("a screw breaks at its tensile strength on the stress area", () => {
    const found = have(stripping(engagement("M6", 8, "steel", "8.8")));
    expectNear(found.loads["screw breaks"], 800 * stressAreaMm2(sizeOf("M6")), 1e-12, "load");
    // ISO 898-1, Table 4: 16,100 N, rounded.
    expectNear(found.loads["screw breaks"], 16100, 0.003, "published");
  });
});

test("what a restorer expects: a steel screw in a short soft hole strips it, in a nut of its own height it breaks", () => {
  expect(have(stripping(engagement("M6", 4, "aluminium", "8.8"))).weaker).toBe("internal strips");
  // An ISO 4032 nut, 0.8 to 0.9 of the diameter high, is made so that the bolt of its class breaks first.
  expect(have(stripping(engagement("M6", 5.2, "steel-c45", "8.8"))).weaker).toBe("screw breaks");
});

test("what is refused, and what is warned of", () => {
  for (const length of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(problemOf(stripping(engagement("M6", length, "steel", "8.8"))).code).toBe("engagement");
  }
  expect(problemOf(stripping(engagement("M6", 5, "steel", "8.8", 0))).code).toBe("friction");
  const warnings = (length: number, material: string) =>
    have(stripping(engagement("M6", length, material, "8.8"))).warnings.join();
  expect(warnings(0.5, "steel")).toContain("Less than one whole thread");
  expect(warnings(15, "steel")).toContain("flatters");
  expect(warnings(6, "zinc")).toContain("rotten inside");
});
