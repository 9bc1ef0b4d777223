import { expect, test } from "vitest";
import { strengthNames, strengthOf } from "../../../../src/engine/workshop/bolts/strength.ts";
import { have, problemOf } from "../ask.ts";
import { figure, readTable } from "../table.ts";

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
