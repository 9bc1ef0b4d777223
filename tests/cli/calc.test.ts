/** The sums of the bench as their users call them. Figures are checked in tests/engine/workshop; here, that they arrive. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { callCommand } from "../support/call-command.ts";

const calc = (...args: string[]) => callCommand("calc", ...args);

async function json(...args: string[]): Promise<Record<string, unknown>> {
  const { code, out, err } = await calc(...args, "--json");
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out) as Record<string, unknown>;
}

/** A call of each sum, with its answer's first line. */
const calls: readonly (readonly [args: readonly string[], says: string])[] = [
  [["convert", "5 lbf·in", "N·m"], "5 lbf·in = 0.5649 N·m"],
  [["thread", "M6x1"], "M6: ISO metric, flanks 60°"],
  [["thread", "--diameter", "5.95 mm", "--pitch", "1 mm"], "It can be, nearest first:"],
  [
    ["torque", "--thread", "M8x1", "--class", "8.8", "--friction", "0.10"],
    "M8x1, 8.8: torque 22.8 N·m, preload 20.7 kN",
  ],
  [
    ["strip", "--thread", "M6", "--engagement", "6 mm", "--material", "aluminium", "--screw", "8.8"],
    "M6, 8.8, 6 mm in cast aluminium 356.0: under a straight pull the thread in the hole strips first.",
  ],
  [
    ["vapour", "--substance", "isopropanol", "--amount", "100 mL", "--room", "30 m³"],
    "isopropanol (propan-2-ol): at most about 31.7 L of vapour, 1060 ppm (2640 mg/m³) over the room",
  ],
  [
    ["air", "--substance", "isopropanol", "--rate", "50 mL/h", "--mixing", "5"],
    "isopropanol (propan-2-ol): about 396 m³/h of fresh air, to stay below 200 ppm (ACGIH TLV)",
  ],
];

test.each(calls)("%j", async (args, says) => {
  const { code, out, err } = await calc(...args);
  expect([code, err, out.split("\n")[0]]).toEqual([0, "", says]);
});

test.each(calls.filter(([[name]]) => name !== "convert"))(
  "%j says what it rests on and who decides",
  async (args) => {
    const { out } = await calc(...args);
    expect(out).toContain("Assumed:\n  - ");
    expect(out).toMatch(/^Sources: .+\.$/m);
    expect(out).toMatch(/(your mentor decide|safety data sheet and local rules decide)/);
    expect(await json(...args)).toMatchObject({
      assumptions: expect.arrayContaining([expect.any(String)]),
      sources: expect.arrayContaining([expect.any(String)]),
      warnings: expect.any(Array),
      deferral: expect.stringContaining("decide"),
    });
  },
);

describe("convert", () => {
  test("without a unit it tells every other one of its kind", async () => {
    // NIST SP 811, Appendix B: 1 in = 25.4 mm and 1 ft = 12 in, exactly.
    const { out } = await calc("convert", "1 1/4 in");
    expect(out).toContain("1.25 in = 31.75 mm\n");
    expect(out).toContain("1.25 in = 1250 thou\n");
    const { values } = await json("convert", "1 1/4 in");
    expect(values).toContainEqual({ value: 31.75, unit: "mm" });
  });

  test("JSON is value and unit, and nothing else", async () => {
    // NIST SP 811: 1 lbf·in = 0.1129848 N·m.
    const found = await json("convert", "5 lbf·in", "N·m");
    expect(Object.keys(found)).toEqual(["value", "unit"]);
    expect(found.value).toBeCloseTo(0.564924, 6);
    expect(found.unit).toBe("N·m");
  });

  test("a value may begin with a minus", async () => {
    expect(await json("convert", "-40 °F", "°C")).toEqual({ value: -40, unit: "°C" });
    expect((await calc("convert", "-40 °F", "°C")).out).toContain("−40 °F = −40 °C\n");
  });

  test("as many figures as were written, four at least", async () => {
    expect((await calc("convert", "1/3 in", "mm")).out).toContain("= 8.467 mm");
    expect((await calc("convert", "1.23456 in", "mm")).out).toContain("= 31.3578 mm");
  });
});

describe("thread", () => {
  test("dimensions of a designation", async () => {
    // ISO 724, ISO 898-1, ISO 2306, ISO 273.
    expect(await json("thread", "M6 × 1")).toMatchObject({
      ...{ designation: "M6", series: "ISO metric", diameterMm: 6, pitchMm: 1, tpi: null, angle: 60 },
      ...{ pitchDiameterMm: 5.35048, minorDiameterMm: 4.91747, stressAreaMm2: 20.1234, tapDrillMm: 5 },
      clearanceHoleMm: { fine: 6.4, medium: 6.6, coarse: 7 },
    });
    expect(await json("thread", "2 BA")).toMatchObject({ angle: 47.5, clearanceHoleMm: null });
  });

  test("candidates with their errors, and the twins in the warnings", async () => {
    const found = await json("thread", "--diameter", "0.247 in", "--tpi", "20");
    expect(found.candidates).toMatchObject([
      { designation: "1/4-20 UNC", angle: 60, tpi: 20, diameterErrorMm: -0.0762, pitchErrorMm: 0 },
      { designation: "1/4 in BSW", angle: 55 },
    ]);
    expect(found.warnings).toContainEqual(
      expect.stringContaining("1/4-20 UNC and 1/4 in BSW must not be mixed"),
    );
  });

  test("the angle narrows it down", async () => {
    const found = await json("thread", "--diameter", "5.95 mm", "--pitch", "1 mm", "--angle", "47.5");
    expect(found.candidates).toMatchObject([{ designation: "0 BA" }]);
  });

  test("none fits: no candidate, what is nearest, and do not re-tap", async () => {
    const found = await json("thread", "--diameter", "10 mm", "--pitch", "3 mm");
    expect(found).toMatchObject({ candidates: [], nearest: expect.any(Array) });
    expect(found.warnings).toContainEqual(expect.stringContaining("do not re-tap"));
  });
});

describe("torque", () => {
  test("JSON", async () => {
    // VDI 2230-1, Table A1: M6, 8.8, 0.14: 9.9 kN, 11.3 N·m.
    const found = await json("torque", "--thread", "M6", "--class", "8.8", "--friction", "0.14");
    expect(found).toMatchObject({
      preload: { value: expect.closeTo(9.91, 2), unit: "kN" },
      torque: { value: expect.closeTo(11.26, 2), unit: "N·m" },
      stressArea: expect.closeTo(20.12, 2),
      shareOfYield: 0.9,
    });
  });

  test("a used bolt, a share in per cent, a nut factor, the way back", async () => {
    const bolt = ["torque", "--thread", "M6", "--class", "8.8"];
    expect(await json(...bolt, "--friction", "0.14", "--used")).toMatchObject({ shareOfYield: 0.6 });
    expect(await json(...bolt, "--friction", "0.14", "--share", "50 %")).toMatchObject({ shareOfYield: 0.5 });
    expect(await json(...bolt, "--nut-factor", "0.2")).toMatchObject({ nutFactor: 0.2 });
    // T = K·F·d: 5 N·m / (0.2 · 6 mm) = 4.1667 kN; proof load of M6, 8.8: 580 · 20.12 = 11.67 kN.
    expect(await json(...bolt, "--nut-factor", "0.2", "--torque", "5 N·m")).toMatchObject({
      preload: { value: 4.16667, unit: "kN" },
      shareOfProof: expect.closeTo(0.357, 3),
    });
  });

  test("the bearing ring that was assumed is said, and can be given", async () => {
    const bolt = ["torque", "--thread", "1/4 in BSF", "--class", "brass", "--friction", "0.15"];
    expect((await calc(...bolt)).out).toContain("assumed: 1.5 times the diameter");
    expect((await calc(...bolt, "--bearing", "12 mm", "--hole", "7 mm")).out).toContain("12 mm (as given)");
  });
});

test("strip: loads, areas, torque and the engagement needed", async () => {
  const found = await json(
    ...["strip", "--thread", "M6", "--engagement", "6 mm", "--shear", "195 MPa", "--screw", "8.8"],
  );
  expect(found).toMatchObject({
    weaker: "internal strips",
    loads: { screw: { unit: "kN" }, internal: { unit: "kN" }, external: { unit: "kN" } },
    torque: { unit: "N·m" },
    engagementNeeded: { value: expect.any(Number), unit: "mm" },
  });
});

describe("vapour and air", () => {
  test("a room by its sides is the room by its volume; a mass is the volume of its weight", async () => {
    const of = (amount: string, room: string) =>
      json("vapour", "--substance", "acetone", "--amount", amount, "--room", room);
    const found = await of("100 mL", "30 m³");
    expect(await of("100 mL", "4 m x 3 m x 2.5 m")).toEqual(found);
    expect(await of("79 g", "30 m³")).toEqual(found);
    expect(found).toMatchObject({
      vapour: { unit: "L" },
      concentration: { unit: "ppm" },
      category: { category: 2 },
    });
  });

  test("own figures need their source, and it is printed", async () => {
    const own = [
      "air",
      "--substance",
      "thinner",
      "--rate",
      "100 mL/h",
      "--molar-mass",
      "92",
      "--gravity",
      "0.87",
    ];
    const all = [...own, "--lower-limit", "1.1 %", "--exposure-limit", "20 ppm"];
    expect((await calc(...all)).err).toContain("--figures-from is missing");
    expect((await calc(...own, "--figures-from", "sheet of May")).err).toContain("--lower-limit is missing");
    const found = await json(...all, "--figures-from", "sheet of May");
    expect(found.sources).toContainEqual(expect.stringContaining("as given here: sheet of May"));
    expect(found.limit).toMatchObject({ value: 20, unit: "ppm" });
  });

  test("a limit as a part of the lower limit", async () => {
    const found = await json("air", "--substance", "isopropanol", "--rate", "50 mL/h", "--limit", "10 % LFL");
    expect(found.limit).toMatchObject({ value: 2000, unit: "ppm" });
  });
});

const m6 = ["torque", "--thread", "M6", "--class", "8.8"];
const spill = ["vapour", "--substance", "acetone"];

test.each<[string[], string | RegExp]>([
  [[], "What is calc to do?"],
  [["tidy"], "There is no calc tidy"],
  [["convert"], "Give a quantity and a unit"],
  [["convert", "5 mm", "in", "ft"], 'calc convert takes no "ft"'],
  [["convert", "5 mm", "in", "--tpi", "20"], "calc convert takes no --tpi"],
  [["convert", "5 kg", "N"], "for the weight of a mass write kgf, lbf or ozf"],
  [["convert", "5 mm", "N·m"], "found 5 mm, a length; expected a torque"],
  [["convert", "5 lbfin", "N·m"], "lbf·in, the nearest unit known"],
  [["convert", "1e400 mm", "in"], "found 1e400"],
  [["convert", "NaN mm", "in"], "found NaN mm"],
  [["convert", "Infinity mm", "in"], "found Infinity mm"],
  [["convert", "5 mm", ""], "The unit is missing"],
  [["thread"], "Give a thread"],
  [["thread", "M6", "--tpi", "20"], "Give a thread"],
  [["thread", "M6x0.8"], "the nearest is M6x0.75"],
  [["thread", "--diameter", "5 mm"], "expected a pitch such as 1 mm, or threads per inch"],
  [
    ["thread", "--diameter", "5 mm", "--pitch", "1 mm", "--tpi", "20"],
    "found both a pitch and threads per inch",
  ],
  [["thread", "--pitch", "1 mm"], "--diameter is missing"],
  [["thread", "--diameter", "-5 mm", "--pitch", "1 mm"], "expected from 0.01 mm to 1 m"],
  [["thread", "--diameter", "5.95", "--pitch", "1 mm"], "write its unit"],
  [["thread", "--diameter", "5 mm", "--tpi", "0"], "expected from 1 to 400"],
  [["torque", "--thread", "M6", "--friction", "0.1"], "--class is missing"],
  [["torque", "--class", "8.8", "--friction", "0.1"], "--thread is missing"],
  [m6, "expected a friction (0.10 greased, 0.15 oiled, 0.2 or more dry) or a nut factor"],
  [[...m6, "--friction", "0"], "found 0; expected a friction"],
  [[...m6, "--friction", "-0.1"], "found -0.1; expected a friction"],
  [[...m6, "--friction", "5"], "found 5; expected a friction"],
  [[...m6, "--friction", "0.1", "--nut-factor", "0.2"], "found both a friction and a nut factor"],
  [[...m6, "--friction", "0.1", "--share", "1.2"], "a share of the yield point"],
  [[...m6, "--friction", "0.1", "--share", "0"], "a share of the yield point"],
  [[...m6, "--friction", "0.1", "--torque", "5 kg"], "a force on an arm"],
  [[...m6, "--friction", "0.1", "--torque", "-5 N·m"], "expected from"],
  [[...m6, "--friction", "0.1", "--torque", "5 N·m", "--share", "0.5"], "found both a torque and a share"],
  [[...m6, "--friction", "0.1", "--bearing", "6 mm"], "expected a ring that is larger than the hole"],
  [["torque", "--thread", "M6", "--class", "13.9", "--friction", "0.1"], "expected one of 4.6"],
  [["torque", "--thread", "M30", "--class", "8.8", "--friction", "0.1"], "the nearest is M24"],
  [["torque", "--thread", "M18", "--class", "9.8", "--friction", "0.1"], "at most 16 mm"],
  [
    ["strip", "--thread", "M6", "--engagement", "0 mm", "--material", "brass", "--screw", "8.8"],
    "expected from 0.01 mm",
  ],
  [
    ["strip", "--thread", "M6", "--engagement", "6 mm", "--material", "cheese", "--screw", "8.8"],
    "expected one of steel-mild",
  ],
  [["strip", "--thread", "M6", "--engagement", "6 mm", "--screw", "8.8"], "--material is missing"],
  [[...spill, "--amount", "100 mL"], "--room is missing"],
  [[...spill, "--amount", "100 mL", "--room", "0 m³"], "a volume above 0"],
  [[...spill, "--amount", "-1 mL", "--room", "30 m³"], "expected from 0.01 mL"],
  [[...spill, "--amount", "5 mm", "--room", "30 m³"], "expected a volume"],
  [[...spill, "--amount", "5 mL", "--room", "4 m x 3 m"], "length x width x height"],
  [
    ["vapour", "--substance", "acetne", "--amount", "5 mL", "--room", "30 m³"],
    "The nearest known is acetone",
  ],
  [["air", "--substance", "acetone", "--rate", "5 mL"], "so much in a time"],
  [["air", "--substance", "acetone", "--rate", "5 mL/h", "--mixing", "0"], "a mixing factor from 1"],
  [
    ["air", "--substance", "acetone", "--rate", "5 mL/h", "--limit", "5 %"],
    "a limit below the lower flammable limit",
  ],
])("%j is a wrong call", async (args, says) => {
  expect(await calc(...args)).toMatchObject({ code: 2, out: "", err: expect.stringContaining(String(says)) });
  expect(await calc(...args, "--json")).toMatchObject({ code: 2, out: "" });
});

test("help names every sum and how it is called", async () => {
  const { code, out } = await calc("--help");
  expect(code).toBe(0);
  for (const name of ["convert", "thread", "torque", "strip", "vapour", "air"])
    expect(out).toContain(`calc ${name}: `);
});

test("the README's sums give what it says", async () => {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const examples = [...readme.matchAll(/`npx benchwright calc (.+?)` prints `(.+?)`/g)];
  expect(examples.length).toBeGreaterThan(0);
  for (const [, call, says] of examples) {
    const args = [...call!.matchAll(/"(.+?)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare!);
    expect((await calc(...args)).out.split("\n")[0]).toBe(says);
  }
});
