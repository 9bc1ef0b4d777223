/** Preload and tightening torque. */

import { bearingMeanMm, bearingOf } from "../../../src/engine/workshop/bolts/bearing.ts";
import { exactLever, nutFactorOf, torqueOfNutFactor } from "../../../src/engine/workshop/bolts/lever.ts";
import { engagementFor, shearAreasPerLength } from "../../../src/engine/workshop/bolts/shear-area.ts";
import { type Strength, strengthOf } from "../../../src/engine/workshop/bolts/strength.ts";
import { type Joint, tighten } from "../../../src/engine/workshop/bolts/tighten.ts";
import { pitchDiameterMm } from "../../../src/engine/workshop/threads/dimensions.ts";
import { have, sizeOf } from "../../engine/workshop/ask.ts";
import { type Row, readTable } from "../../engine/workshop/table.ts";
import { type Check, cell, halfUnit, near, nearPart, type Standing, same, table } from "../ledger.ts";
import { withdrawn } from "./strength.ts";

function joint(thread: string, strength: Strength, friction: number): Joint {
  const size = sizeOf(thread);
  const lubrication = { kind: "friction", thread: friction, head: friction } as const;
  return { size, strength, lubrication, bearing: bearingOf(size), used: false };
}

const strengthIn = (thread: string, name: string): Strength =>
  have(strengthOf(name, sizeOf(thread).diameterMm));

/** Of the row that prints 4.6 N·m where its neighbours and the formula want 4.36: the printed figure over the formula's. */
const misprint = { size: "M4", class: "10.9", mu: "0.12", over: 4.6 / 4.36 };

const isMisprint = (row: Row): boolean =>
  row.get("size") === misprint.size && row.get("class") === misprint.class && row.get("mu") === misprint.mu;

function vdi(row: Row): Check[] {
  const [size, name, mu] = [row.get("size")!, row.get("class")!, cell(row, "mu")];
  const ask = joint(size, strengthIn(size, name), mu);
  const { preloadN, torqueNm } = have(tighten(ask));
  const exact =
    exactLever(ask.size.pitchMm, pitchDiameterMm(ask.size), 60, mu) + (bearingMeanMm(ask.bearing) / 2) * mu;
  const calculated = "printed to 0.01";
  const printed = "half a unit of the last figure, and 1 %, to which the table rounds within";
  const slack = (column: string): number => halfUnit(row, column) + 0.01 * cell(row, column);
  const torque = isMisprint(row)
    ? near(
        "MA_table_Nm is a misprint: over the formula by",
        cell(row, "MA_table_Nm") / torqueNm,
        misprint.over,
        0.003,
        "torque by formula to three figures",
        "formula",
      )
    : near("MA_table_Nm", torqueNm, cell(row, "MA_table_Nm"), slack("MA_table_Nm"), printed, "memory");
  return [
    near("FM_calc_kN", preloadN / 1000, cell(row, "FM_calc_kN"), 0.0051, calculated, "formula"),
    near("MA_calc_Nm", torqueNm, cell(row, "MA_calc_Nm"), 0.0051, calculated, "formula"),
    near("FM_table_kN", preloadN / 1000, cell(row, "FM_table_kN"), slack("FM_table_kN"), printed, "memory"),
    torque,
    nearPart(
      "MA_exact_Nm",
      (preloadN / 1000) * exact,
      cell(row, "MA_exact_Nm"),
      0.003,
      "printed to 0.01, the least being 2.25",
      "formula",
    ),
    ...confirmed(row, torqueNm),
  ];
}

/** "published 3.0": what another table prints. */
function confirmed(row: Row, torqueNm: number): Check[] {
  const [, printed] = /published ([\d.]+)/.exec(row.get("confirmed_by")!) ?? [];
  const because = "half a unit of the smallest two-figure torque printed";
  return printed === undefined
    ? []
    : [nearPart("confirmed_by", torqueNm, Number(printed), 0.012, because, "published")];
}

export const vdiTable = table(
  "vdi2230_a1_coarse.csv",
  "VDI 2230-1, Table A1, shank bolts of coarse thread at 90 % of yield",
  (row) => `${row.get("size")} ${row.get("class")} ${row.get("mu")}`,
  vdi,
);

const nominalYield = new Map(
  readTable("iso898_1_classes.csv").map((row) => [row.get("class"), cell(row, "yield_nom")]),
);
/** ISO 898-1:1988: 300 MPa tensile, of which 0.6 is the yield point. */
nominalYield.set(withdrawn, 180);

const isOfSteel = (row: Row): boolean => row.get("page") === "684";

/** The table of M1.6 of steel, of 2003, takes 90 % of the nominal yield point, which for 10.9 and 12.9 is below the least. */
function smallScrew(row: Row): { readonly strength: Strength; readonly share: number } {
  const [size, name] = [row.get("size")!, row.get("class")!];
  if (!isOfSteel(row)) return { strength: strengthIn(size, name.replace("A-", "A2-")), share: 0.9 };
  const known = name === "5.6(4.8)" ? "5.6" : name;
  const like = strengthIn(size, known === withdrawn ? "4.6" : known);
  return { strength: { ...like, name: known, yield: nominalYield.get(known)! }, share: 0.9 };
}

function smallScrews(row: Row): Check[] {
  const { strength, share } = smallScrew(row);
  const { preloadN, torqueNm } = have(tighten(joint(row.get("size")!, strength, cell(row, "mu")), share));
  const [part, why] = isOfSteel(row)
    ? [0.03, "reckoned with an older, smaller stress diameter"]
    : [0.022, "printed to two figures"];
  const forceSlack = halfUnit(row, "FM_kN") + part * cell(row, "FM_kN");
  const torqueSlack = halfUnit(row, "MA_Nm") + 0.05 * cell(row, "MA_Nm");
  return [
    near("FM_kN", preloadN / 1000, cell(row, "FM_kN"), forceSlack, why, "published"),
    near(
      "MA_Nm",
      torqueNm,
      cell(row, "MA_Nm"),
      torqueSlack,
      "cheese, pan and hexagon heads differ by 5 %",
      "published",
    ),
  ];
}

export const smallScrewTable = table(
  "torque_small_screws.csv",
  "tables of small screws to VDI 2230, pp. 684 and 686 of the handbook that prints them",
  (row) => `${row.get("size")} ${row.get("class")} ${row.get("mu")}`,
  smallScrews,
);

/** What the thirty preloads of NASA-STD-5020 come to. */
function thirty(row: Row): { readonly mean: number; readonly deviation: number } {
  const preloads = row.get("input")!.split(": ")[1]!.split(" ").map(Number);
  const mean = preloads.reduce((sum, one) => sum + one, 0) / preloads.length;
  const squares = preloads.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { mean, deviation: Math.sqrt(squares / (preloads.length - 1)) };
}

const exampleRows = new Map(readTable("torque_examples.csv").map((row) => [row.get("id")!, row]));
const measured = thirty(exampleRows.get("NASA5020-mean")!);

/** 1.500-8 UN-2A of FED-STD-H28/2B, 90.1, in inches, with a bore of 0.792 in. */
const boredScrew = {
  ...{ pitchMm: 1 / 8, angle: 60, screwLeastMm: 1.4828, nutGreatestPitchMm: 1.4283 },
  ...{ screwLeastPitchMm: 1.4093, nutGreatestMinorMm: 1.39 },
};

/** By id: what the engine makes of the example, the part by which it may differ, and why. */
const examples: Readonly<Record<string, readonly [found: () => number, part: number, because: string]>> = {
  "NASA5020-mean": [() => measured.mean, 0.001, "printed to four figures"],
  "NASA5020-sd": [() => measured.deviation, 0.001, "printed to four figures"],
  "NASA5020-K": [() => nutFactorOf(450, measured.mean, 0.375), 0.002, "printed to three figures"],
  "Wentzell-6.1": [() => torqueOfNutFactor(0.2, 0.85 * 0.334 * 85000, 0.75), 1e-5, "printed to six figures"],
  "Jindal-9.3": [
    () => exactLever(2.5, (18 + 18 - 1.2268 * 2.5) / 2, 60, 0.15) / 18 + 0.625 * 0.13,
    0.0005,
    "printed to five figures, from rounded angles",
  ],
  "H28-90.1a": [
    // Half the tensile strength is its shear strength there; both divide out.
    () => engagementFor(1.492 - 0.7854 * 0.792 ** 2, 0.5, shearAreasPerLength(boredScrew).external),
    0.001,
    "printed to three figures",
  ],
};

export const worked = table(
  "torque_examples.csv",
  "NASA-STD-5020 (2012), A.2; Wentzell, Machine Design, 6.1; Jindal, Machine Design, 9-3; FED-STD-H28/2B, 90.1",
  (row) => row.get("id")!,
  (row) => {
    const [found, part, because] = examples[row.get("id")!]!;
    return [nearPart(row.get("formula")!, found(), cell(row, "published"), part, because, "published")];
  },
);

const m6 = (): Joint => joint("M6", strengthIn("M6", "8.8"), 0.1);
const standingOf = (row: Row): Standing =>
  row.get("status")!.startsWith("page seen") || row.get("condition")!.startsWith("class A")
    ? "published"
    : "memory";

/** M6: P 1, d2 5.350, ring of 8.9 (ISO 4014) around 6.6 (ISO 273): MA = FM·(0.16P + 0.58·d2·µ + Dkm/2·µ) by hand. */
function frictionRow(row: Row, mu: number): Check {
  const { preloadN, torqueNm } = have(tighten(joint("M6", strengthIn("M6", "8.8"), mu)));
  const byHand = (preloadN / 1000) * (0.16 + 0.58 * 5.35 * mu + ((8.9 + 6.6) / 4) * mu);
  return nearPart(`M6 at ${mu}`, torqueNm, byHand, 0.0005, "d2 by hand to four figures", standingOf(row));
}

function nutFactorRow(row: Row, value: number): Check {
  const { nutFactor } = have(tighten({ ...m6(), lubrication: { kind: "nut-factor", nutFactor: value } }));
  return near(`${value} is reckoned with`, nutFactor, value, 1e-9, "binary fractions", standingOf(row));
}

/** The scatter that every answer names: "±25 % lubricated, ±35 % dry". Cadmium, which no answer names, lies between. */
function scatterRow(row: Row, value: number): Check[] {
  const said = have(tighten(m6())).assumptions.find((one) => one.includes("scatters"))!;
  const [wet, dry] = [...said.matchAll(/±(\d+) %/g)].map(([, percent]) => Number(percent) / 100);
  if (row.get("condition") === "lubricated") return [same("scatter, lubricated", wet!, value, "published")];
  if (row.get("condition") === "unlubricated") return [same("scatter, dry", dry!, value, "published")];
  return [
    near(
      "scatter, between lubricated and dry",
      value,
      (wet! + dry!) / 2,
      (dry! - wet!) / 2,
      "it lies between the two that are named",
      "published",
    ),
  ];
}

function handbookRow(row: Row): Check[] {
  const values = ["low", "typical", "high"]
    .filter((name) => row.get(name) !== "")
    .map((name) => cell(row, name));
  return values.flatMap((value) => {
    if (row.get("kind") === "mu") return [frictionRow(row, value)];
    return row.get("kind") === "K" ? [nutFactorRow(row, value)] : scatterRow(row, value);
  });
}

export const handbooks = table(
  "friction_nut_factor.csv",
  "MIL-HDBK-60, VDI 2230 Table A5, NASA TM-106943, NASA-STD-5020 and handbooks, as each row names",
  (row) => `${row.get("kind")}: ${row.get("condition")}`,
  handbookRow,
);
