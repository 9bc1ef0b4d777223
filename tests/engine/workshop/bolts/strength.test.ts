import { describe, expect, test } from "vitest";
import { strengthNames, strengthOf } from "../../../../src/engine/workshop/bolts/strength.ts";
import { stressAreaMm2 } from "../../../../src/engine/workshop/threads/dimensions.ts";
import { have, problemOf, sizeOf } from "../ask.ts";
import { expectNear, figure, readTable } from "../table.ts";

describe("ISO 898-1, Table 3 (from memory)", () => {
  test.each(
    readTable("iso898_1_classes.csv").map(
      (row) => [`${row.get("class")} ${row.get("d_range")}`, row] as const,
    ),
  )("%s", (_name, row) => {
    const diameter = row.get("d_range") === "d>16" ? 20 : 16;
    expect(have(strengthOf(row.get("class")!, diameter))).toMatchObject({
      tensile: figure(row, "Rm_min"),
      yield: figure(row, "yield_min"),
      proof: figure(row, "Sp"),
    });
  });
});

describe("ISO 898-1, Tables 4 and 5 (published loads)", () => {
  const rows = readTable("iso898_1_loads.csv");
  const withdrawn = rows.filter((row) => row.get("class") === "3.6");
  const known = rows.filter((row) => row.get("class") !== "3.6");

  test("class 3.6, withdrawn in 2009, is not known", () => {
    expect(withdrawn).toHaveLength(6);
    expect(problemOf(strengthOf("3.6", 6)).code).toBe("unknown-class");
  });

  test.each(known.map((row) => [`${row.get("size")} ${row.get("class")}`, row] as const))(
    "%s",
    (_name, row) => {
      const size = sizeOf(row.get("size")!);
      const strength = have(strengthOf(row.get("class")!, size.diameterMm));
      const area = stressAreaMm2(size);
      // The standard rounds areas and loads to three figures: 0.7 % together.
      expectNear(strength.tensile * area, figure(row, "Fu_N_published"), 0.007, "ultimate");
      const proof = row.get("Fp_N_published") === "" ? "Fp_N_calc" : "Fp_N_published";
      expectNear(strength.proof! * area, figure(row, proof), 0.007, "proof");
    },
  );
});

test("brass: ISO 8839, tensile strength (published)", () => {
  const rows = readTable("material_shear.csv").filter((row) => row.get("material")!.startsWith("CuZn"));
  expect(rows.map((row) => figure(row, "Rm"))).toEqual([440, 370, 440]);
  for (const name of ["CU2", "CU3", "brass", "Brass"]) {
    expect(have(strengthOf(name, 6)).tensile).toBe(440);
    expect(have(strengthOf(name, 8)).tensile).toBe(370);
  }
});

test.each([
  ["A2-70", "A2-70"],
  ["a2/70", "A2-70"],
  ["A4 80", "A4-80"],
  ["A150", "A1-50"],
  ["8,8", "8.8"],
  [" class 10.9 ", "10.9"],
])("%s is %s", (text, name) => {
  expect(have(strengthOf(text, 6)).name).toBe(name);
});

test.each([
  ["8.7", 6, "unknown-class", "8.8"],
  ["12.8", 6, "unknown-class", "12.9"],
  ["A2-71", 6, "unknown-class", "A2-70"],
  ["", 6, "unknown-class", undefined],
  ["constructor", 6, "unknown-class", undefined],
  ["9.8", 18, "class-size", undefined],
])("%j in %s mm is refused", (text, diameter, code, nearest) => {
  const problem = problemOf(strengthOf(text, diameter));
  expect(problem.code).toBe(code);
  expect(problem.nearest).toBe(nearest);
});

test("every class yields before it breaks, and is proved below its yield", () => {
  expect(strengthNames()).toHaveLength(20);
  for (const name of strengthNames()) {
    const strength = have(strengthOf(name, 6));
    expect(strength.yield).toBeLessThan(strength.tensile);
    expect(strength.proof ?? 0).toBeLessThan(strength.yield);
  }
});
