/** The table of solvents holds, of what the sources say, what leads to the more careful answer. */
import { describe, expect, test } from "vitest";
import { limitAsPart } from "../../../../src/engine/workshop/air/gas.ts";
import { withOwnFigures } from "../../../../src/engine/workshop/air/substance.ts";
import { substanceIds, substanceNamed } from "../../../../src/engine/workshop/air/substances.ts";
import { categoryOf } from "../../../../src/engine/workshop/air/vapour.ts";
import { have, problemOf } from "../ask.ts";
import { figure, type Row, readTable } from "../table.ts";

const rows = readTable("solvents.csv");
const ids = ["kerosene", "ethanol", "isopropanol", "acetone", "white-spirit", "naphtha", "petroleum-naphtha"];

/** The numbers at the head of the named cells, empty ones left out. */
function heads(row: Row, ...names: string[]): number[] {
  return names.map((name) => Number.parseFloat(row.get(name)!)).filter((value) => !Number.isNaN(value));
}

/** Every limit for a working day that a cell names, as a part of the air. Ceilings and short-term limits stand behind. */
function limits(row: Row, molarMass: number): number[] {
  return ["NIOSH_REL", "OSHA_PEL", "ACGIH_TLV"].flatMap((name) => {
    const cell = row.get(name)!.replace(/\b(?:C|ST|STEL) .*/, "");
    return [...cell.matchAll(/([\d.]+) (ppm|mg\/m3)/g)].map(([, amount, unit]) =>
      limitAsPart({ amount: Number(amount), unit: unit === "ppm" ? "ppm" : "mg/m³" }, molarMass),
    );
  });
}

test("a row for each, and no other", () => {
  expect(rows).toHaveLength(7);
  expect(new Set(substanceIds())).toEqual(new Set(ids));
});

describe.each(rows.map((row, place) => [row.get("name")!, ids[place]!, row] as const))(
  "%s",
  (_name, id, row) => {
    const substance = have(substanceNamed(id));

    test("molar mass: the least; specific gravity: the greatest", () => {
      // Of white spirit the ACGIH limit, 525 mg/m³ = 100 ppm, gives 128: the source's own sum.
      const mass = /-> (\d+)/.exec(row.get("MW")!)?.[1] ?? row.get("MW")!;
      expect(substance.molarMass).toBe(Number.parseFloat(mass));
      expect(substance.gravity).toBe(Math.max(...row.get("SG")!.split("-").map(Number)));
    });

    test("lower limit and flash point: the least of the sources; boiling point: where it begins", () => {
      const lower = heads(row, "LEL_pct", "IEC60079_LFL_UFL", "NFPA497_LFL_UFL");
      expect(substance.lowerLimit).toBeCloseTo(Math.min(...lower) / 100, 9);
      const flash = heads(row, "flash_C", "IEC60079_flash_C", "NFPA497_flash_C");
      expect(substance.flashC).toBeCloseTo(Math.min(...flash), 9);
      expect(substance.boilingC).toBe(figure(row, "bp_C"));
    });

    test("exposure limit: the strictest of NIOSH, OSHA and ACGIH", () => {
      const found = limits(row, substance.molarMass);
      expect(found.length).toBeGreaterThan(0);
      // A limit is printed in ppm and rounded in mg/m³: 4 %.
      expect(limitAsPart(substance.exposure!, substance.molarMass)).toBeLessThanOrEqual(
        Math.min(...found) * 1.04,
      );
      expect(limitAsPart(substance.exposure!, substance.molarMass)).toBeGreaterThanOrEqual(
        Math.min(...found) * 0.96,
      );
    });

    test("GHS category from flash and boiling point", () => {
      expect(categoryOf(substance)?.category).toBe(Number.parseInt(row.get("GHS_flam_cat_from_data")!, 10));
    });
  },
);

test("usual names, and the nearest of what is not known", () => {
  expect(have(substanceNamed("Mineral Spirits")).name).toContain("white spirit");
  expect(have(substanceNamed("IPA")).name).toContain("isopropanol");
  expect(problemOf(substanceNamed("acetne"))).toMatchObject({
    code: "unknown-substance",
    nearest: "acetone",
  });
  expect(problemOf(substanceNamed("__proto__")).code).toBe("unknown-substance");
});

test("own figures go before the table's; without a row all three must be there", () => {
  const known = have(substanceNamed("white-spirit"));
  expect(withOwnFigures("white-spirit", known, { lowerLimit: 0.006, source: "data sheet" })).toMatchObject({
    lowerLimit: 0.006,
    molarMass: 128,
    source: expect.stringContaining("data sheet; the rest: NIOSH"),
  });
  expect(withOwnFigures("mine", undefined, { gravity: 0.8, source: "data sheet" })).toEqual({
    missing: ["molarMass", "lowerLimit"],
  });
});
