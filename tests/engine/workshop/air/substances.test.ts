/** The table of solvents holds, of what the sources say, what leads to the more careful answer. */
import { expect, test } from "vitest";
import { withOwnFigures } from "../../../../src/engine/workshop/air/substance.ts";
import { substanceIds, substanceNamed } from "../../../../src/engine/workshop/air/substances.ts";
import { have, problemOf } from "../ask.ts";
import { readTable } from "../table.ts";

test("a row for each, and no other", () => {
  expect(readTable("solvents.csv")).toHaveLength(substanceIds().length);
});

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
