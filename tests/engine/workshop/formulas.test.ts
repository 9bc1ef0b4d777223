/** The table of formulas leaves out no file that reckons or names a standard. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { SumName } from "../../../src/engine/workshop/formulas/formula.ts";
import { chapters, formulasOf } from "../../../src/engine/workshop/formulas/index.ts";
import { projectDir } from "../../support/project.ts";

const folder = `${projectDir}/src/engine/workshop`;

const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts") && !file.startsWith("formulas/"));

/** A power, or a function that no mere counting needs. */
const reckons = / \*\* |Math\.(?:PI|sqrt|cbrt|tan|atan|sin|cos|log|log10|exp|pow)\b/;
/** A standard, handbook or data set by its name and number. */
const cites =
  /\b(?:ISO|BS|ASME|VDI|EN|IEC|NFPA|MIL|FED-STD|NASA-STD|NIST SP)[- ]?[A-Z]?\d|\b(?:ACGIH|NIOSH|CODATA)\b|\d+ CFR/;

const bearing = files.filter((file) => {
  const text = readFileSync(`${folder}/${file}`, "utf8");
  return reckons.test(text) || cites.test(text);
});

const rows = chapters.flatMap(({ formulas }) => formulas);

test("there are files that bear formulas, in every part of the workshop", () => {
  for (const file of ["units.ts", "threads/form.ts", "bolts/lever.ts", "air/gas.ts"])
    expect(bearing).toContain(file);
  expect(bearing.length).toBeGreaterThan(20);
});

test.each(bearing)("%s has a row", (file) => {
  expect(rows.flatMap((row) => row.files)).toContain(file);
});

describe.each(rows.map((row) => [row.id, row] as const))("%s", (_id, row) => {
  test("stands in files that are there", () => {
    expect(row.files.length).toBeGreaterThan(0);
    for (const file of row.files) expect(files).toContain(file);
  });

  test("says something, holds for something and comes from somewhere", () => {
    expect(row.says.join("")).not.toBe("");
    for (const text of [row.name, row.range, row.source]) expect(text).not.toBe("");
    // A formula that is printed somewhere says where: a number of its standard, a chapter or a page.
    if (row.standing === "published") expect(row.source).toMatch(/\d|NIOSH/);
    for (const text of [...row.says, row.range, row.unit]) expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });
});

test("no two rows have the same id or name", () => {
  for (const names of [rows.map(({ id }) => id), rows.map(({ name }) => name), chapters.map(({ id }) => id)])
    expect(new Set(names).size).toBe(names.length);
});

test.each<SumName>(["convert", "thread", "identify", "torque", "strip", "vapour", "air"])(
  "%s reckons by formulas of the table",
  (sum) => {
    expect(formulasOf(sum).length).toBeGreaterThan(0);
  },
);

/** Figures that the table says and the code has: each a row's text and the file's. */
test.each([
  ["torque", "0.58", "bolts/lever.ts"],
  ["preload", "1.155", "bolts/lever.ts"],
  ["ppm", "24.45", "air/gas.ts"],
  ["unified", "0.9743", "threads/form.ts"],
  ["tolerance-metric", "180", "threads/limits.ts"],
  ["tolerance-ba", "0.375", "threads/limits.ts"],
  ["twins", "0.09", "threads/twins.ts"],
  ["identify", "0.03", "threads/identify.ts"],
  ["bearing", "1.5", "bolts/bearing.ts"],
  ["scatter", "±25 %", "bolts/tighten-words.ts"],
])("%s: %s stands in %s", (id, figure, file) => {
  expect(rows.find((row) => row.id === id)!.says.join()).toContain(figure);
  expect(readFileSync(`${folder}/${file}`, "utf8")).toContain(figure);
});
