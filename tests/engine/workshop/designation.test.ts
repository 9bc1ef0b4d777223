import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Designation,
  type DesignationCode,
  parseDesignation,
} from "../../../src/engine/workshop/designation.ts";
import { editDistance } from "../../../src/engine/workshop/edit-distance.ts";
import { seriesNamed, sizesOf } from "../../../src/engine/workshop/threads/series.ts";
import type { SeriesName } from "../../../src/engine/workshop/threads/size.ts";
import { figure, type Row, readTable } from "./table.ts";

function read(text: string): Designation {
  const result = parseDesignation(text);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.problem)}`);
  return result.value;
}

/** Every row of the table, and nothing else, is what the series know. */
function expectWhole(rows: readonly Row[], count: number, series: readonly SeriesName[]): void {
  expect(rows).toHaveLength(count);
  expect(sizesOf(series)).toHaveLength(count);
}

describe("ISO 261", () => {
  const rows = readTable("threads_iso_metric.csv");

  test("the whole table", () => expectWhole(rows, 77, ["ISO metric"]));

  test.each(rows.map((row) => [row.get("designation")!, row] as const))("%s", (name, row) => {
    const [diameterMm, pitchMm] = [figure(row, "d"), figure(row, "P")];
    const expected = { series: "ISO metric", designation: name, diameterMm, pitchMm, tpi: undefined };
    expect(read(name)).toMatchObject(expected);
    expect(read(`M${diameterMm} × ${pitchMm}`)).toMatchObject(expected);
  });
});

describe("BS 93", () => {
  const rows = readTable("threads_ba.csv");

  test("the whole table", () => expectWhole(rows, 17, ["BA"]));

  test.each(rows.map((row) => [row.get("ba")!, row] as const))("%s BA", (number, row) => {
    const expected = { series: "BA", diameterMm: figure(row, "D"), pitchMm: figure(row, "p") };
    expect(read(`${number} BA`)).toMatchObject({ ...expected, designation: `${number} BA`, size: number });
    expect(read(`No. ${number} B.A.`)).toMatchObject(expected);
    // The standard's formula, rounded as it rounds: p = 0.9^n to 0.01 mm, D = 6p^1.2 to 0.1 mm (16 BA to 0.01 mm).
    const pitch = 0.9 ** Number(number);
    expect(expected.pitchMm).toBe(Number(pitch.toFixed(2)));
    expect(expected.diameterMm).toBe(Number((6 * pitch ** 1.2).toFixed(number === "16" ? 2 : 1)));
  });
});

describe("ASME B1.1", () => {
  const rows = readTable("threads_unified.csv");

  test("the whole table", () => expectWhole(rows, 29, ["UNC", "UNF"]));

  test.each(rows.map((row) => [`${row.get("size")}-${row.get("tpi")} ${row.get("series")}`, row] as const))(
    "%s",
    (name, row) => {
      const size = read(name);
      expect(size).toMatchObject({ series: row.get("series"), size: row.get("size"), designation: name });
      expect(size.tpi).toBe(figure(row, "tpi"));
      expect(size.diameterMm).toBeCloseTo(figure(row, "major_in") * 25.4, 9);
      // Printed to 0.00001 in.
      expect(Math.abs(size.pitchMm / 25.4 - figure(row, "P_in"))).toBeLessThanOrEqual(5.1e-6);
      expect(read(`${row.get("size")}-${row.get("tpi")}`)).toEqual(size);
      expect(read(`${row.get("size")} ${row.get("series")}`)).toEqual(size);
    },
  );
});

describe("BS 84", () => {
  const rows = readTable("threads_whitworth.csv");

  test("the whole table", () => expectWhole(rows, 19, ["BSW", "BSF"]));

  test.each(rows.map((row) => [`${row.get("size")} in ${row.get("series")}`, row] as const))(
    "%s",
    (name, row) => {
      const size = read(name);
      expect(size).toMatchObject({ series: row.get("series"), size: row.get("size"), designation: name });
      expect(size.tpi).toBe(figure(row, "tpi"));
      expect(size.diameterMm).toBeCloseTo(figure(row, "major_in") * 25.4, 9);
      // Printed to 0.000001 in.
      expect(Math.abs(size.pitchMm / 25.4 - figure(row, "P_in"))).toBeLessThanOrEqual(5.1e-7);
      expect(read(`${row.get("series")} ${row.get("size")}" x ${row.get("tpi")} tpi`)).toEqual(size);
    },
  );
});

test.each<[SeriesName, number]>([
  // Flank angles of ISO 68-1, ASME B1.1, BS 93 and BS 84.
  ["ISO metric", 60],
  ["UNC", 60],
  ["UNF", 60],
  ["BA", 47.5],
  ["BSW", 55],
  ["BSF", 55],
])("flanks of %s: %s°", (name, angle) => {
  expect(seriesNamed(name)).toMatchObject({ name, angle });
});

describe("what people write", () => {
  test.each([
    ["M6", "M6"],
    ["m6", "M6"],
    ["M 6", "M6"],
    ["M6x1", "M6"],
    ["M6X1.0", "M6"],
    ["M6 × 0.75", "M6x0.75"],
    ["M6*0,75", "M6x0.75"],
    ["M3x0.5", "M3"],
    ["M3,5 x 0,6", "M3.5"],
    ["1/4-20 UNC", "1/4-20 UNC"],
    ["¼-20 UNC", "1/4-20 UNC"],
    ["1/4 - 20 unc", "1/4-20 UNC"],
    ['1/4"-20 UNC', "1/4-20 UNC"],
    ["1/4–20 U.N.C.", "1/4-20 UNC"],
    ["UNC 1/4-20", "1/4-20 UNC"],
    [".250-20", "1/4-20 UNC"],
    ["0.312-18 UNC", "5/16-18 UNC"],
    ["1/4-28", "1/4-28 UNF"],
    ["#8-32", "#8-32 UNC"],
    ["8-32", "#8-32 UNC"],
    ["No. 8-32 NC", "#8-32 UNC"],
    ["# 10 - 32", "#10-32 UNF"],
    ["1/4 in BSF", "1/4 in BSF"],
    ["1/4in 26tpi BSF", "1/4 in BSF"],
    ["1/4 in BSW", "1/4 in BSW"],
    ['1/4" Whit.', "1/4 in BSW"],
    ["3/16 Whitworth", "3/16 in BSW"],
    ["2 BA", "2 BA"],
    ["2BA", "2 BA"],
    ["2-B.A.", "2 BA"],
    ["BA 4", "4 BA"],
    ["#4 ba", "4 BA"],
  ])("%s is %s", (text, designation) => {
    expect(read(text)).toMatchObject({ designation, leftHand: false, tolerance: undefined });
  });

  test("a tolerance class and the hand", () => {
    expect(read("M6-6g")).toMatchObject({ designation: "M6", tolerance: "6g", leftHand: false });
    expect(read("M6x0.75-4h6h LH")).toMatchObject({
      designation: "M6x0.75",
      tolerance: "4h6h",
      leftHand: true,
    });
    expect(read("1/4-20 UNC-2A-LH")).toMatchObject({
      designation: "1/4-20 UNC",
      tolerance: "2A",
      leftHand: true,
    });
    expect(read("2 BA left-hand")).toMatchObject({
      designation: "2 BA",
      tolerance: undefined,
      leftHand: true,
    });
  });

  test("what is printed is read as itself, and no two sizes are printed alike", () => {
    const printed = sizesOf().map(({ designation }) => designation);
    expect(printed.map((designation) => read(designation).designation)).toEqual(printed);
    expect(new Set(printed).size).toBe(printed.length);
  });
});

describe("what is not known", () => {
  test.each<[string, DesignationCode, string | undefined]>([
    ["", "empty", undefined],
    ["M6".padEnd(60), "too-long", undefined],
    ["M6x0.8", "unknown-size", "M6x0.75"],
    ["M6.1", "unknown-size", "M6"],
    ["M5.5", "unknown-size", "M5.5x0.5"],
    ["17 BA", "unknown-size", "16 BA"],
    ["1/4-26", "unknown-size", "1/4 in BSF"],
    ["1/4-20 UNF", "unknown-size", "1/4-28 UNF"],
    ["#8-33", "unknown-size", "#8-32 UNC"],
    ["5/8-11 UNC", "unknown-size", "1/2-13 UNC"],
    ["1 in BSW", "unknown-size", "1/2 in BSW"],
    ["1/4", "series-missing", "1/4-20 UNC"],
    ["1/4 in", "series-missing", "1/4-20 UNC"],
    ["1/4 BSX", "not-a-thread", "1/4 in BSW"],
    ["N6x0.75", "not-a-thread", "M6x0.75"],
    ["wood screw", "not-a-thread", undefined],
    ["M", "not-a-thread", undefined],
    ["M0", "not-a-thread", undefined],
    ["1/0-20 UNC", "not-a-thread", "1/4-20 UNC"],
    ["constructor", "not-a-thread", undefined],
  ])("%s", (text, code, nearest) => {
    const result = parseDesignation(text);
    expect(result.ok ? result.value : [result.problem.code, result.problem.nearest]).toEqual([code, nearest]);
  });

  test("a size without a series: all that it may be", () => {
    expect(parseDesignation("1/4")).toMatchObject({
      problem: { expected: "a size with its series, such as 1/4-20 UNC, 1/4-28 UNF, 1/4 in BSW, 1/4 in BSF" },
    });
  });

  test("any text gives a thread of the tables or a problem in words", () => {
    const pieces = fc.constantFrom(
      "M",
      "6",
      "1/4",
      "x",
      "-",
      "20",
      " ",
      "in",
      "UNC",
      "BSF",
      "BA",
      "#",
      "½",
      ".",
      "LH",
    );
    const texts = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces).map((parts) => parts.join("")),
    );
    const known = new Set(sizesOf().map(({ designation }) => designation));
    fc.assert(
      fc.property(texts, (text) => {
        const result = parseDesignation(text);
        if (result.ok) expect(known.has(result.value.designation)).toBe(true);
        else expect(result.problem.found && result.problem.expected).not.toBe("");
      }),
      { numRuns: 1000 },
    );
  });
});

test("Levenshtein's distance of the usual examples", () => {
  // Wagner and Fischer's measure; kitten/sitting and Saturday/Sunday are the textbook pairs.
  expect(editDistance("kitten", "sitting")).toBe(3);
  expect(editDistance("saturday", "sunday")).toBe(3);
  expect(editDistance("", "abc")).toBe(3);
});
