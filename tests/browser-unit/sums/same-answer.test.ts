/** The page gives what the command gives, in the same figures. */
import { describe, expect, test } from "vitest";
import { formatNumber } from "../../../src/engine/workshop/format-quantity.ts";
import { roundedUp } from "../../../src/engine/workshop/grounds.ts";
import { type Amount, askCommand, askPage, type Data, dataOf, type Values } from "./ask.ts";

type Shown = Readonly<Record<string, string>>;

/** What the page is to show, from the command's data. */
interface Row {
  readonly id: string;
  readonly examples: readonly Values[];
  readonly shown: (data: Data) => Shown;
}

const written = (amount: unknown, figures: number): string => {
  const { value, unit } = amount as Amount;
  return `${formatNumber(value, figures)} ${unit}`;
};
const mm = (value: unknown): string => `${formatNumber(value as number)} mm`;
const percent = (value: unknown): string => `${formatNumber((value as number) * 100, 3)} %`;
/** The command rounds up to four figures in its data and to three in its words; so does the page. */
const upTo3 = (value: unknown): string => formatNumber(roundedUp(value as number, 3), 3);

const rows: readonly Row[] = [
  {
    id: "thread",
    examples: [{ thread: "M6" }, { thread: "1/4-20 UNC" }, { thread: "2 BA LH" }],
    shown: (data) => ({
      "Outside diameter": mm(data.diameterMm),
      Pitch: mm(data.pitchMm),
      "Pitch diameter": mm(data.pitchDiameterMm),
      "Minor diameter": mm(data.minorDiameterMm),
      "Stress area": `${formatNumber(data.stressAreaMm2 as number)} mm²`,
      "Tapping drill": mm(data.tapDrillMm),
      ...(data.clearanceHoleMm === null
        ? {}
        : { "Clearance hole, medium": mm((data.clearanceHoleMm as { medium: number }).medium) }),
    }),
  },
  {
    id: "torque",
    examples: [
      { thread: "M8x1", class: "8.8", friction: "0.10" },
      { thread: "1/4-20 UNC", class: "A2-70", "nut-factor": "0.2", used: "yes" },
      { thread: "2 BA", class: "brass", friction: "0.15", torque: "8 lbf·in", bearing: "7 mm" },
    ],
    shown: (data) => ({
      Torque: written(data.torque, 3),
      Preload: written(data.preload, 3),
      "Of the yield point, pull and twist together": percent(data.shareOfYield),
      "Stress area": `${formatNumber(data.stressArea as number)} mm²`,
      "Nut factor": formatNumber(data.nutFactor as number, 3),
    }),
  },
  {
    id: "vapour",
    examples: [
      { substance: "white-spirit", amount: "100 mL", room: "4 m x 3 m x 2.4 m" },
      { substance: "acetone", amount: "2 oz", room: "12 x 10 x 8 ft", temperature: "77 °F" },
      {
        ...{
          substance: "another substance",
          amount: "0.2 L",
          room: "30 m³",
          "figures-from": "its data sheet",
        },
        ...{ "molar-mass": "100", gravity: "0.8", "lower-limit": "1 %", "exposure-limit": "50 ppm" },
      },
    ],
    shown: (data) => ({
      "On average over the room, at most about": `${upTo3((data.concentration as Amount).value)} ppm`,
      "Of the lower flammable limit": `${upTo3((data.shareOfLowerLimit as number) * 100)} %`,
      Vapour: `${upTo3((data.vapour as Amount).value)} L`,
      "Air that it makes flammable if it stays together": `${upTo3((data.flammableAir as Amount).value)} m³`,
    }),
  },
  {
    id: "air",
    examples: [
      { substance: "isopropanol", rate: "50 mL/h" },
      { substance: "white-spirit", rate: "0.1 US pt/h", limit: "10 % LFL", mixing: "5" },
      { substance: "kerosene", rate: "1 L/h", limit: "20 mg/m³", temperature: "30 °C" },
    ],
    shown: (data) => ({
      "Fresh air": `${upTo3((data.air as Amount).value)} m³/h`,
      "That limit is, of the lower flammable limit": `${upTo3((data.limitShareOfLowerLimit as number) * 100)} %`,
    }),
  },
];

describe.each(rows)("$id", ({ id, examples, shown }) => {
  test.each(examples)("%j", async (values) => {
    const data = await dataOf(id, values);
    const { answer, troubles } = askPage(id, values);
    expect(troubles).toEqual([]);
    const figures = Object.fromEntries(answer!.figures.map(({ name, value }) => [name, value]));
    expect(figures).toMatchObject(shown(data));
    expect(answer!.grounds).toMatchObject({ assumptions: data.assumptions, warnings: data.warnings });
    expect(new Set(answer!.grounds.sources)).toEqual(new Set(data.sources));
  });
});

/** Loads are rounded down to three figures from more than the data holds: compared with what the command prints. */
describe("strip", () => {
  test.each<Values>([
    { thread: "M6", engagement: "8 mm", material: "aluminium-a380", class: "8.8" },
    { thread: "1/4 in BSF", engagement: "3/16 in", material: "zinc-3", class: "4.6", friction: "0.2" },
    { thread: "2 BA", engagement: "4 mm", shear: "28000 psi", class: "brass" },
  ])("%j", async (values) => {
    const { out } = await askCommand("strip", values);
    const { answer } = askPage("strip", values);
    const [title = ""] = out.split(": under a straight pull");
    expect(answer!.headline).toContain(title);
    const printed = [...out.matchAll(/ (?:at|needs) ([\d.]+ (?:kN|N·m|mm))/g)].map(([, amount]) => amount);
    expect(printed).toHaveLength(5);
    expect(answer!.figures.map(({ value }) => value).sort()).toEqual(printed.sort());
    expect(out).toContain(/(the .* first)\.$/.exec(answer!.headline)![1]!);
    for (const said of [...answer!.grounds.assumptions, ...answer!.grounds.warnings])
      expect(out).toContain(said);
  });
});

describe("identify", () => {
  test.each<Values>([
    { diameter: "5.95 mm", pitch: "1 mm" },
    { diameter: "0.248 in", tpi: "20" },
    { diameter: "5.3 mm", pitch: "2 mm" },
  ])("%j", async (values) => {
    const data = await dataOf("identify", values);
    const { answer } = askPage("identify", values);
    const named = (list: unknown) =>
      (list as { designation: string }[]).map(({ designation }) => designation);
    const wanted = named(data.nearest ?? data.candidates);
    expect(wanted.length).toBeGreaterThan(0);
    expect(answer!.comparison!.rows.map(([thread]) => thread)).toEqual(wanted);
    expect(answer!.headline.startsWith("None of")).toBe(data.nearest !== undefined);
    expect(answer!.grounds.warnings).toEqual(data.warnings);
  });

  test("where none fits it says not to re-tap", () => {
    const { answer } = askPage("identify", { diameter: "5.3 mm", pitch: "2 mm" });
    expect(answer!.grounds.warnings.join()).toContain("do not re-tap");
  });

  test("near twins are told", () => {
    const { answer } = askPage("identify", { diameter: "5.95 mm", pitch: "1 mm" });
    expect(answer!.grounds.warnings.join()).toContain("M6 and 0 BA must not be mixed");
  });
});

describe("convert", () => {
  test.each<Values>([
    { quantity: "8 lbf·in", unit: "N·m" },
    { quantity: "-40 °F", unit: "°C" },
    { quantity: "1 ft 2 in", unit: "mm" },
    { quantity: "1.0000001 in", unit: "mm" },
  ])("%j", async (values) => {
    const { out } = await askCommand("convert", values);
    expect(askPage("convert", values).answer!.headline).toBe(out.split("\n")[0]);
  });

  test("without a unit it gives every unit of the kind, as the command does one by one", async () => {
    const { figures } = askPage("convert", { quantity: "5 N·m" }).answer!;
    expect(figures.map(({ name }) => name)).toEqual(expect.arrayContaining(["lbf·in", "lbf·ft", "kgf·cm"]));
    for (const { name, value } of figures) {
      const { out } = await askCommand("convert", { quantity: "5 N·m", unit: name });
      expect(out.split("\n")[0]).toBe(`5 N·m = ${value} ${name}`);
    }
  });
});

describe("the unit that stands first", () => {
  const values = { thread: "M8x1", class: "8.8", friction: "0.10" };

  test("is the one chosen, with the other beside it", () => {
    const [metric, inch] = (["metric", "inch"] as const).map(
      (units) => askPage("torque", values, units).answer!,
    );
    const paired = metric!.figures.filter(({ also }) => also !== undefined);
    expect(paired.length).toBeGreaterThan(2);
    for (const { name, value, also } of paired)
      expect(inch!.figures.find((figure) => figure.name === name)).toEqual({
        name,
        value: also,
        also: value,
      });
  });

  test("the other is the same amount, as the command converts it", async () => {
    const data = await dataOf("torque", values);
    const { out } = await askCommand("convert", {
      quantity: `${(data.torque as Amount).value} N·m`,
      unit: "lbf·ft",
    });
    const [, converted] = / = ([\d.]+) lbf·ft/.exec(out)!;
    const { also } = askPage("torque", values).answer!.figures[0]!;
    expect(also).toBe(`${formatNumber(Number(converted), 3)} lbf·ft`);
  });

  test("vapour is rounded up and loads are rounded down in either", () => {
    const spill = { substance: "acetone", amount: "35 mL", room: "31 m³" };
    const [metric, inch] = (["metric", "inch"] as const).map(
      (units) => askPage("vapour", spill, units).answer!,
    );
    const cubicFeet = (text: string) =>
      Number(text.split(" ")[0]) * (text.endsWith("ft³") ? 1 : 1 / 28.316846592);
    const exact = (0.035 * 1000 * 0.79 * 0.082057366 * 293.15) / 58.1 / 28.316846592;
    for (const { figures } of [metric!, inch!]) {
      const { value, also } = figures.find(({ name }) => name === "Vapour")!;
      for (const text of [value, also!]) {
        expect(cubicFeet(text)).toBeGreaterThanOrEqual(exact);
        expect(cubicFeet(text)).toBeLessThan(exact * 1.01);
      }
    }
  });
});
