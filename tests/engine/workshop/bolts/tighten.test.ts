import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bearingMeanMm, bearingOf } from "../../../../src/engine/workshop/bolts/bearing.ts";
import { exactLever, nutFactorOf, torqueOfNutFactor } from "../../../../src/engine/workshop/bolts/lever.ts";
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
import { pitchDiameterMm } from "../../../../src/engine/workshop/threads/dimensions.ts";
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

/** Half a unit of the last figure that is printed. */
function halfUnit(row: Row, name: string): number {
  const decimals = /\.(\d+)/.exec(row.get(name)!)?.[1]?.length ?? 0;
  return 0.5001 * 10 ** -decimals;
}

describe("VDI 2230-1, Table A1, M4 to M12", () => {
  const rows = readTable("vdi2230_a1_coarse.csv");
  /** Printed 4.6; the formula gives 4.36 and all neighbours fit: a misprint candidate. */
  const misprint = (row: Row) =>
    ["M4", "10.9", "0.12"].join() === [row.get("size"), row.get("class"), row.get("mu")].join();

  test("all 126 rows, one of them a misprint candidate", () => {
    expect(rows).toHaveLength(126);
    expect(rows.filter(misprint)).toHaveLength(1);
  });

  test.each(rows.map((row) => [`${row.get("size")} ${row.get("class")} ${row.get("mu")}`, row] as const))(
    "%s",
    (_name, row) => {
      const ask = joint(row.get("size")!, row.get("class")!, figure(row, "mu"));
      const found = have(tighten(ask));
      // By formula, printed to 0.01.
      expect(Math.abs(found.preloadN / 1000 - figure(row, "FM_calc_kN"))).toBeLessThanOrEqual(0.0051);
      expect(Math.abs(found.torqueNm - figure(row, "MA_calc_Nm"))).toBeLessThanOrEqual(0.0051);
      // As printed (from memory; confirmed rows published). Beyond rounding 1 %: the table rounds within.
      const printed = (name: string) => halfUnit(row, name) + 0.01 * figure(row, name);
      expect(Math.abs(found.preloadN / 1000 - figure(row, "FM_table_kN"))).toBeLessThanOrEqual(
        printed("FM_table_kN"),
      );
      if (!misprint(row)) {
        expect(Math.abs(found.torqueNm - figure(row, "MA_table_Nm"))).toBeLessThanOrEqual(
          printed("MA_table_Nm"),
        );
      }
      const mu = figure(row, "mu");
      const exact =
        exactLever(ask.size.pitchMm, pitchDiameterMm(ask.size), 60, mu) +
        (bearingMeanMm(ask.bearing) / 2) * mu;
      expectNear(figure(row, "FM_calc_kN") * exact, figure(row, "MA_exact_Nm"), 0.003, "exact form");
    },
  );

  test("the torques confirmed by published tables", () => {
    const confirmed = rows.filter((row) => row.get("confirmed_by") !== "");
    expect(confirmed.length).toBeGreaterThan(20);
    for (const row of confirmed) {
      const printed = Number(/published ([\d.]+)/.exec(row.get("confirmed_by")!)![1]);
      const { torqueNm } = have(tighten(joint(row.get("size")!, row.get("class")!, figure(row, "mu"))));
      // 1.2 %: half a unit of the smallest two-figure torque printed.
      expectNear(torqueNm, printed, 0.012, `${row.get("size")} ${row.get("class")}`);
    }
  });
});

describe("small screws, VDI 2230 (published)", () => {
  const rows = readTable("torque_small_screws.csv");
  const classOf = (row: Row) => {
    const name = row.get("class")!;
    return name.startsWith("A-") ? `A2-${name.slice(2)}` : name === "5.6(4.8)" ? "5.6" : name;
  };
  const known = rows.filter((row) => row.get("class") !== "3.6");
  const nominal = new Map(
    readTable("iso898_1_classes.csv").map((row) => [row.get("class"), figure(row, "yield_nom")]),
  );
  /** The table of M1.6, of 2003, takes 90 % of the nominal yield, which for 10.9 and 12.9 is below the least. */
  const shareOf = (row: Row, { strength }: Joint) =>
    row.get("page") === "684" ? (0.9 * nominal.get(strength.name)!) / strength.yield : 0.9;

  test("all 93 rows but those of class 3.6, which was withdrawn", () => {
    expect([rows.length, known.length]).toEqual([93, 90]);
  });

  test.each(known.map((row) => [`${row.get("size")} ${row.get("class")} ${row.get("mu")}`, row] as const))(
    "%s",
    (_name, row) => {
      const ask = joint(row.get("size")!, classOf(row), figure(row, "mu"));
      const found = have(tighten(ask, shareOf(row, ask)));
      // M1.6 of steel is reckoned a little smaller there (older stress diameter): 3 %; stainless to 2 %. Printed to two figures.
      const preload =
        halfUnit(row, "FM_kN") + (row.get("page") === "684" ? 0.03 : 0.022) * figure(row, "FM_kN");
      expect(Math.abs(found.preloadN / 1000 - figure(row, "FM_kN"))).toBeLessThanOrEqual(preload);
      // Heads differ (cheese, pan, hexagon): 5 %.
      const torque = halfUnit(row, "MA_Nm") + 0.05 * figure(row, "MA_Nm");
      expect(Math.abs(found.torqueNm - figure(row, "MA_Nm"))).toBeLessThanOrEqual(torque);
    },
  );
});

describe("worked examples (published)", () => {
  const rows = new Map(readTable("torque_examples.csv").map((row) => [row.get("id")!, row]));
  const published = (id: string) => figure(rows.get(id)!, "published");

  test("NASA-STD-5020, A.2: the nut factor of thirty measured preloads", () => {
    const preloads = rows.get("NASA5020-mean")!.get("input")!.split(": ")[1]!.split(" ").map(Number);
    const mean = preloads.reduce((sum, one) => sum + one, 0) / preloads.length;
    expectNear(mean, published("NASA5020-mean"), 0.001, "mean");
    const squares = preloads.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    expectNear(Math.sqrt(squares / 29), published("NASA5020-sd"), 0.001, "standard deviation");
    expectNear(nutFactorOf(450, mean, 0.375), published("NASA5020-K"), 0.002, "K");
  });

  test("Wentzell, Machine Design, 6.1: T = K·F·d at 85 % of the proof load", () => {
    expectNear(torqueOfNutFactor(0.2, 0.85 * 0.334 * 85000, 0.75), published("Wentzell-6.1"), 1e-5, "torque");
  });

  test("Jindal, Machine Design, 9-3: nut factor from friction", () => {
    const [d, p] = [18, 2.5];
    const mean = (d + d - 1.2268 * p) / 2;
    expectNear(exactLever(p, mean, 60, 0.15) / d + 0.625 * 0.13, published("Jindal-9.3"), 0.0005, "K");
  });
});

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
        fc.double({ min: 0.001, max: 0.05, noNaN: true }),
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

test("brass stays below the torque at which it must not break yet: ISO 8839, CU2 and CU3 (published)", () => {
  const row = readTable("material_shear.csv").find((one) =>
    one.get("material")!.includes("min breaking torque"),
  )!;
  const torques = [...row.get("material")!.matchAll(/(M[\d.]+) ([\d.]+)/g)];
  expect(torques).toHaveLength(7);
  for (const [, size, torque] of torques) {
    expect(have(tighten(joint(size!, "brass", 0.15))).torqueNm, size).toBeLessThan(Number(torque));
  }
});

describe("what is refused", () => {
  test.each([0, -0.1, 0.02, 0.61, 1e9, Number.NaN, Number.POSITIVE_INFINITY])("friction %s", (friction) => {
    expect(problemOf(tighten(joint("M6", "8.8", friction))).code).toBe("friction");
    expect(problemOf(pullOf(joint("M6", "8.8", friction), 5)).code).toBe("friction");
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

  test("every row is of a kind that is looked at", () => {
    expect(kind("mu").length + kind("K").length + kind("Gamma +/-").length).toBe(rows.length);
    expect(rows.length).toBeGreaterThan(30);
  });

  test.each(rows.map((row) => [`${row.get("kind")}: ${row.get("condition")}`, row] as const))(
    "%s",
    (_name, row) => {
      for (const value of figures(row)) {
        if (row.get("kind") === "mu")
          expect(have(tighten(joint("M6", "8.8", value))).preloadN).toBeGreaterThan(0);
        else if (row.get("kind") === "K") {
          const ask = {
            ...joint("M6", "8.8", 0.1),
            lubrication: { kind: "nut-factor", nutFactor: value },
          } as const;
          expect(have(tighten(ask)).nutFactor).toBeCloseTo(value, 9);
        } else if (!row.get("condition")!.startsWith("cadmium")) {
          // NASA-STD-5020, 6.1d: the scatter that the assumptions name.
          expect(have(tighten(joint("M6", "8.8", 0.1))).assumptions.join()).toContain(
            `±${Math.round(100 * value)} %`,
          );
        } else expect(value).toBe(0.3);
      }
    },
  );

  test("the ranges take in all of them", () => {
    const all = (name: string) => kind(name).flatMap(figures);
    expect(frictionRange.least).toBeLessThanOrEqual(Math.min(...all("mu")));
    expect(frictionRange.greatest).toBeGreaterThanOrEqual(Math.max(...all("mu")));
    expect(nutFactorRange.least).toBeLessThanOrEqual(Math.min(...all("K")));
    expect(nutFactorRange.greatest).toBeGreaterThanOrEqual(Math.max(...all("K")));
  });
});
