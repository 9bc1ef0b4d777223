/** Solvents, their classes and the air that they need. */

import { airNeeded } from "../../../src/engine/workshop/air/air-needed.ts";
import { parseLimit } from "../../../src/engine/workshop/air/exposure-written.ts";
import { ghsCategory, nfpaClass } from "../../../src/engine/workshop/air/flammability.ts";
import {
  limitAsPart,
  mgPerM3PerPpm,
  molarVolume,
  vapourPerLitre,
} from "../../../src/engine/workshop/air/gas.ts";
import type { Substance } from "../../../src/engine/workshop/air/substance.ts";
import { substanceNamed } from "../../../src/engine/workshop/air/substances.ts";
import { categoryOf } from "../../../src/engine/workshop/air/vapour.ts";
import { parseQuantity } from "../../../src/engine/workshop/quantity.ts";
import { have } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { type Check, cell, near, nearPart, type Standing, same, table } from "../ledger.ts";

/** What the engine calls the substances of the table, by their number in the Chemical Abstracts. */
const ids = new Map([
  ["8008-20-6", "kerosene"],
  ["64-17-5", "ethanol"],
  ["67-63-0", "isopropanol"],
  ["67-64-1", "acetone"],
  ["8052-41-3", "white-spirit"],
  ["8032-32-4", "naphtha"],
  ["8002-05-9", "petroleum-naphtha"],
]);

/** Numbers at the head of the named cells, empty ones left out. */
function heads(row: Row, ...names: string[]): number[] {
  return names.map((name) => cell(row, name)).filter((value) => !Number.isNaN(value));
}

/** Every limit for a working day that a cell names, as a part of the air. Ceilings and short-term limits stand behind. */
function limits(row: Row, molarMass: number): number[] {
  return ["NIOSH_REL", "OSHA_PEL", "ACGIH_TLV"].flatMap((name) => {
    const text = row.get(name)!.replace(/\b(?:C|ST|STEL) .*/, "");
    return [...text.matchAll(/([\d.]+) (ppm|mg\/m3)/g)].map(([, amount, unit]) =>
      limitAsPart({ amount: Number(amount), unit: unit === "ppm" ? "ppm" : "mg/m³" }, molarMass),
    );
  });
}

/** Of what sources say the engine takes what leads to the more careful answer. */
function solvent(row: Row): Check[] {
  const substance = have(substanceNamed(ids.get(row.get("cas")!)!));
  // Of white spirit the ACGIH limit, 525 mg/m³ = 100 ppm, gives 128: the source's own sum.
  const mass = /-> (\d+)/.exec(row.get("MW")!)?.[1] ?? row.get("MW")!;
  const lower = heads(row, "LEL_pct", "IEC60079_LFL_UFL", "NFPA497_LFL_UFL");
  const flash = heads(row, "flash_C", "IEC60079_flash_C", "NFPA497_flash_C");
  const standing: Standing = ids.get(row.get("cas")!) === "white-spirit" ? "memory" : "published";
  return [
    same("MW, the least", substance.molarMass, Number.parseFloat(mass), "published"),
    same("SG, the greatest", substance.gravity, Math.max(...row.get("SG")!.split("-").map(Number)), standing),
    near(
      "lower limit, the least",
      substance.lowerLimit * 100,
      Math.min(...lower),
      1e-9,
      "binary fractions",
      standing,
    ),
    near(
      "flash point, the least",
      substance.flashC!,
      Math.min(...flash),
      1e-9,
      "binary fractions",
      "published",
    ),
    same("bp_C, where it begins", substance.boilingC!, cell(row, "bp_C"), "published"),
    nearPart(
      "exposure limit, the strictest",
      limitAsPart(substance.exposure!, substance.molarMass),
      Math.min(...limits(row, substance.molarMass)),
      0.04,
      "printed in ppm and rounded in mg/m³",
      "published",
    ),
    same(
      "GHS category",
      categoryOf(substance)?.category ?? "none",
      cell(row, "GHS_flam_cat_from_data"),
      "formula",
    ),
  ];
}

export const solvents = table(
  "solvents.csv",
  "NIOSH Pocket Guide, OSHA, IEC 60079-20-1:2010, NFPA 497:2008, as the last column says",
  (row) => row.get("name")!.slice(0, 40),
  solvent,
);

/** A boiling point that the row's rule lets in, and one that it does not where there is a rule. */
function boiling(row: Row): { readonly inside: number; readonly outside: number | undefined } {
  const [, relation, limit] = /bp(<=|>=|<|>)([\d.]+)/.exec(row.get("bp_C_rule")!) ?? [];
  if (relation === undefined) return { inside: 150, outside: undefined };
  const [below, above] = [Number(limit) - 1, Number(limit) + 1];
  return relation.startsWith("<") ? { inside: below, outside: above } : { inside: above, outside: below };
}

function classOf(row: Row, flash: number, boils: number): string {
  const found =
    row.get("scheme") === "NFPA30" ? nfpaClass(flash, boils) : ghsCategory(flash, boils)?.category;
  return String(found ?? "none");
}

const standingOfClass = (row: Row): Standing =>
  row.get("scheme") === "GHS" || ["IA", "IB", "IC"].includes(row.get("class")!) ? "published" : "memory";

/** Its middle, and its ends as they are counted in or out. */
function flammable(row: Row): Check[] {
  const [name, standing, { inside, outside }] = [row.get("class")!, standingOfClass(row), boiling(row)];
  const [low, high] = [row.get("flash_low_C")!, row.get("flash_high_C")!];
  const between = high === "" ? Number(low) + 10 : Number(high) - 0.01;
  const is = (flash: number, boils: number): string => (classOf(row, flash, boils) === name ? "in" : "out");
  const end = (at: string, included: string, beyond: number): Check[] =>
    at === ""
      ? []
      : [
          same(`at ${at} °C`, is(Number(at), inside), included === "yes" ? "in" : "out", standing),
          same(`beyond ${at} °C`, is(Number(at) + beyond, inside), "out", standing),
        ];
  return [
    same("class", classOf(row, between, inside), name, standing),
    ...end(low, row.get("flash_low_incl")!, -0.01),
    ...end(high, row.get("flash_high_incl")!, 0.01),
    ...(outside === undefined ? [] : [same("another boiling point", is(between, outside), "out", standing)]),
    ...statementOf(row, between, inside),
  ];
}

function statementOf(row: Row, flash: number, boils: number): Check[] {
  if (row.get("scheme") !== "GHS") return [];
  const found = ghsCategory(flash, boils)!;
  return [
    same("H_statement", found.statement, row.get("H_statement")!, "published"),
    same("signal", found.signal, row.get("signal")!, "published"),
  ];
}

export const flammableClasses = table(
  "flammable_classes.csv",
  "GHS as in 29 CFR 1910.106(a)(19); NFPA 30",
  (row) => `${row.get("scheme")} ${row.get("class")}`,
  flammable,
);

/** A substance of a worked example, whose lower limit is not part of it and only has to be above the limit. */
function example(molarMass: number, gravity: number): Substance {
  const unknown = { exposure: undefined, flashC: undefined, boilingC: undefined };
  return { name: "example", molarMass, gravity, lowerLimit: 0.07, ...unknown, source: "the example" };
}

const litresPerHour = (text: string): number => have(parseQuantity(text, "flow")).base * 3.6e6;
const fahrenheit70 = (70 - 32) / 1.8;
const cubicFoot = have(parseQuantity("1 ft³")).base;

/** m³/h. */
function air(substance: Substance, litres: number, ppm: number, mixing: number, celsius: number): number {
  const limit = { amount: ppm, unit: "ppm", name: "the example" } as const;
  return have(airNeeded({ substance, litresPerHour: litres, limit, mixing, celsius })).airM3PerHour;
}

/** 3/8 gal/h, 40 % of it toluene. */
const toluene = litresPerHour("1 US pt/h") * 8 * 0.375 * 0.4;
const chloroform = (mixing: number): number =>
  air(example(133.4, 1.32), litresPerHour("1.5 US pt/h"), 350, mixing, fahrenheit70) / cubicFoot / 60;

/** By id: what the engine makes of the example, the part by which it may differ, and why. */
const examples: Readonly<Record<string, readonly [found: () => number, part: number, because: string]>> = {
  "AT-20.2a": [
    () => (toluene * vapourPerLitre(example(92, 0.87), 20)) / 60,
    0.002,
    "the book rounds 8.34 lb/gal and 454 g/lb",
  ],
  "AT-20.2b": [
    () => (air(example(92, 0.87), toluene, 80, 5, 20) * 1000) / 60,
    0.002,
    "the book reckons with its own rounded 2.15",
  ],
  "ACGIH-403": [
    () => (vapourPerLitre(example(1, 1), fahrenheit70) * have(parseQuantity("1 US pt")).base) / cubicFoot,
    0.002,
    "printed to three figures",
  ],
  "molar-24.45": [() => molarVolume(25), 0.001, "24.45 is an old rounding of 24.465"],
  "NPG-conv-IPA": [() => mgPerM3PerPpm(60.1), 0.001, "printed to three figures"],
  "10pctLEL-IPA": [() => have(parseLimit("10 % LEL", "", 0.02)).amount, 1e-9, "binary fractions"],
  "10pctLEL-ethanol": [
    () => have(parseLimit("10 % of the lower limit", "", 0.033)).amount,
    1e-9,
    "binary fractions",
  ],
  "ACGIH-ex1a": [() => chloroform(1), 0.002, "by the rounded constant 403"],
  "ACGIH-ex1b": [() => chloroform(5), 0.002, "by the rounded constant 403"],
};

export const ventilation = table(
  "ventilation_examples.csv",
  "Abulencia and Theodore, 20.2; ACGIH, Industrial Ventilation, chapter 2; NIOSH Pocket Guide",
  (row) => row.get("id")!,
  (row) => {
    const [found, part, because] = examples[row.get("id")!]!;
    const standing = row.get("status") === "MEMORY" ? "memory" : "published";
    return [nearPart(row.get("formula")!, found(), cell(row, "published"), part, because, standing)];
  },
);
