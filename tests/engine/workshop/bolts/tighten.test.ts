import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bearingOf } from "../../../../src/engine/workshop/bolts/bearing.ts";
import { strengthOf } from "../../../../src/engine/workshop/bolts/strength.ts";
import {
  frictionRange,
  type Joint,
  type Lubrication,
  nutFactorRange,
  pullOf,
  tighten,
  usualShare,
} from "../../../../src/engine/workshop/bolts/tighten.ts";
import { sizesOf } from "../../../../src/engine/workshop/threads/series.ts";
import { have, problemOf, sizeOf } from "../ask.ts";
import { expectNear, figure, type Row, readTable } from "../table.ts";

function joint(thread: string, name: string, friction: number, used = false): Joint {
  const size = sizeOf(thread);
  const lubrication: Lubrication = { kind: "friction", thread: friction, head: friction };
  return {
    size,
    strength: have(strengthOf(name, size.diameterMm)),
    lubrication,
    bearing: bearingOf(size),
    used,
  };
}

const graded = fc.constantFrom("8.8", "10.9", "12.9", "4.6", "A2-70", "brass");
const small = sizesOf().filter(({ diameterMm }) => diameterMm <= 16);
const joints = fc.record({
  size: fc.constantFrom(...small),
  name: graded,
  friction: fc.double({ min: 0.04, max: 0.55, noNaN: true }),
});

describe("any joint", () => {
  test("more friction: less preload, more torque", () => {
    fc.assert(
      fc.property(
        joints,
        // 0.55 and 0.05 come to a little more than 0.6, the most that is taken.
        fc.double({ min: 0.001, max: 0.049, noNaN: true }),
        ({ size, name, friction }, more) => {
          const [slippery, rough] = [friction, friction + more].map((mu) =>
            have(tighten(joint(size.designation, name, mu))),
          );
          expect(rough!.preloadN).toBeLessThan(slippery!.preloadN);
          expect(rough!.torqueNm).toBeGreaterThan(slippery!.torqueNm);
        },
      ),
    );
  });

  test("more of the yield point: more preload and torque, in proportion", () => {
    fc.assert(
      fc.property(
        joints,
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        ({ size, name, friction }, share) => {
          const ask = joint(size.designation, name, friction);
          const [half, whole] = [share, 2 * share].map((one) => have(tighten(ask, one)));
          expect(whole!.preloadN / half!.preloadN).toBeCloseTo(2, 9);
          expect(whole!.torqueNm / half!.torqueNm).toBeCloseTo(2, 9);
          expect(half!.shareOfYield).toBeCloseTo(share, 9);
        },
      ),
    );
  });

  test("the way back leads to the same preload", () => {
    fc.assert(
      fc.property(joints, ({ size, name, friction }) => {
        const ask = joint(size.designation, name, friction);
        const there = have(tighten(ask));
        const back = have(pullOf(ask, there.torqueNm));
        expect(back.preloadN / there.preloadN).toBeCloseTo(1, 9);
        expect(back.shareOfYield).toBeCloseTo(there.shareOfYield, 9);
      }),
    );
  });

  test("a nut factor that comes out, put in, gives nearly the same torque", () => {
    fc.assert(
      fc.property(joints, ({ size, name, friction }) => {
        const ask = joint(size.designation, name, friction);
        const long = have(tighten(ask));
        const short = have(
          tighten({ ...ask, lubrication: { kind: "nut-factor", nutFactor: long.nutFactor } }),
        );
        // The friction that K stands for is found by the linear form: 4 % for steep, rough threads.
        expectNear(short.torqueNm, long.torqueNm, 0.04, "torque");
        expectNear(
          short.torqueNm * 1000,
          long.nutFactor * short.preloadN * size.diameterMm,
          1e-9,
          "T = K·F·d",
        );
      }),
    );
  });
});

test("nine tenths of the yield point only for new graded bolts", () => {
  const share = (name: string, used: boolean) => usualShare(joint("M6", name, 0.1, used));
  for (const name of ["8.8", "9.8", "10.9", "12.9"])
    expect([share(name, false), share(name, true)]).toEqual([0.9, 0.6]);
  for (const name of ["4.6", "4.8", "5.6", "5.8", "6.8", "A1-50", "A4-80", "brass"])
    expect(share(name, false)).toBe(0.6);
  expect(have(tighten(joint("M6", "4.6", 0.1))).assumptions.join()).toContain("our own caution");
});

describe("what is refused", () => {
  test.each([0, -0.1, 0.02, 0.61, 1e9, Number.NaN, Number.POSITIVE_INFINITY])("friction %s", (friction) => {
    expect(problemOf(tighten(joint("M6", "8.8", friction))).code).toBe("friction");
    expect(problemOf(pullOf(joint("M6", "8.8", friction), 5)).code).toBe("friction");
  });

  test("a friction under the head, by its own name", () => {
    const ask = joint("M6", "8.8", 0.1);
    const lubrication = { kind: "friction", thread: 0.1, head: 0 } as const;
    expect(problemOf(tighten({ ...ask, lubrication }))).toMatchObject({ code: "head-friction", found: "0" });
  });

  test.each([0, -1, 1.01, Number.NaN])("a share of %s", (share) => {
    expect(problemOf(tighten(joint("M6", "8.8", 0.1), share)).code).toBe("share");
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a torque of %s", (torque) => {
    expect(problemOf(pullOf(joint("M6", "8.8", 0.1), torque)).code).toBe("torque");
  });

  test.each([0, -0.2, 0.03, 0.81, Number.NaN])("a nut factor of %s", (nutFactor) => {
    const ask = { ...joint("M6", "8.8", 0.1), lubrication: { kind: "nut-factor", nutFactor } } as const;
    expect(problemOf(tighten(ask)).code).toBe("nut-factor");
  });

  test("a nut factor that the slope of the thread takes up: P/(2π·d) is 0.0265 of M6", () => {
    const of = (nutFactor: number) =>
      ({ ...joint("M6", "8.8", 0.1), lubrication: { kind: "nut-factor", nutFactor } }) as const;
    expect(problemOf(tighten(of(0.05)))).toMatchObject({
      code: "nut-factor",
      expected: expect.stringContaining("M6"),
    });
    expect(have(tighten(of(0.09))).preloadN).toBeGreaterThan(0);
  });
});

test("what is assumed of the head is said, and what goes beyond the bolt", () => {
  expect(have(tighten(joint("2 BA", "brass", 0.15))).assumptions.join()).toContain(
    "7.05 mm (assumed: 1.5 times the diameter)",
  );
  expect(have(tighten(joint("1/4 in BSF", "8.8", 0.15))).assumptions.join()).toContain("assumed");
  expect(have(tighten(joint("M6", "8.8", 0.15))).assumptions.join()).toContain(
    "8.9 mm (hexagon head, ISO 4014)",
  );
  expect(have(tighten(joint("M6", "8.8", 0.15))).warnings).toEqual([]);
  expect(have(pullOf(joint("M6", "8.8", 0.1), 20)).warnings.join()).toContain("Beyond the yield point");
});

describe("friction and nut factors of the handbooks", () => {
  const rows = readTable("friction_nut_factor.csv");
  const kind = (name: string) => rows.filter((row) => row.get("kind") === name);
  const figures = (row: Row) =>
    ["low", "typical", "high"].filter((name) => row.get(name) !== "").map((name) => figure(row, name));

  test("the ranges take in all of them", () => {
    const all = (name: string) => kind(name).flatMap(figures);
    expect(frictionRange.least).toBeLessThanOrEqual(Math.min(...all("mu")));
    expect(frictionRange.greatest).toBeGreaterThanOrEqual(Math.max(...all("mu")));
    expect(nutFactorRange.least).toBeLessThanOrEqual(Math.min(...all("K")));
    expect(nutFactorRange.greatest).toBeGreaterThanOrEqual(Math.max(...all("K")));
  });
});
