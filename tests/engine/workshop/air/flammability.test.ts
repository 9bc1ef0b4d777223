import { describe, expect, test } from "vitest";
import { ghsCategory, nfpaClass } from "../../../../src/engine/workshop/air/flammability.ts";
import { figure, type Row, readTable } from "../table.ts";

const rows = readTable("flammable_classes.csv");

/** A boiling point that the row's rule lets in, and one that it does not where there is a rule. */
function boiling(row: Row): { inside: number; outside: number | undefined } {
  const [, relation, limit] = /bp(<=|>=|<|>)([\d.]+)/.exec(row.get("bp_C_rule")!) ?? [];
  if (relation === undefined) return { inside: 150, outside: undefined };
  const at = Number(limit);
  const [below, above] = [at - 1, at + 1];
  return relation.startsWith("<") ? { inside: below, outside: above } : { inside: above, outside: below };
}

function classOf(row: Row, flash: number, boils: number): string | undefined {
  if (row.get("scheme") === "NFPA30") return nfpaClass(flash, boils);
  const found = ghsCategory(flash, boils);
  return found && String(found.category);
}

test("ten rows: GHS (29 CFR 1910.106, published), NFPA 30 (in part from memory)", () => {
  expect(rows).toHaveLength(10);
});

describe.each(rows.map((row) => [`${row.get("scheme")} ${row.get("class")}`, row] as const))(
  "%s",
  (_name, row) => {
    const name = row.get("class");
    const { inside, outside } = boiling(row);
    const [low, high] = [row.get("flash_low_C"), row.get("flash_high_C")];

    test("its ends, as they are counted in or out", () => {
      if (low !== "") {
        expect(classOf(row, Number(low), inside) === name).toBe(row.get("flash_low_incl") === "yes");
        expect(classOf(row, Number(low) - 0.01, inside)).not.toBe(name);
      }
      if (high !== "") {
        expect(classOf(row, Number(high), inside) === name).toBe(row.get("flash_high_incl") === "yes");
        expect(classOf(row, Number(high) + 0.01, inside)).not.toBe(name);
      }
      const between = high === "" ? Number(low) + 10 : Number(high) - 0.01;
      expect(classOf(row, between, inside)).toBe(name);
      if (outside !== undefined) expect(classOf(row, between, outside)).not.toBe(name);
    });

    test("its statement and signal word", () => {
      if (row.get("scheme") !== "GHS") return expect(row.get("H_statement")).toBe("");
      const flash = figure(row, "flash_high_C") - 0.01;
      expect(ghsCategory(flash, inside)).toMatchObject({
        statement: row.get("H_statement"),
        signal: row.get("signal"),
      });
    });
  },
);

test("a boiling point at the limit itself", () => {
  expect(ghsCategory(-20, 35)?.category).toBe(1);
  expect(ghsCategory(-20, 35.01)?.category).toBe(2);
  expect([nfpaClass(-20, 37.7), nfpaClass(-20, 37.8)]).toEqual(["IA", "IB"]);
  expect(ghsCategory(93.1, 200)).toBeUndefined();
});
