/** Factors of units. */

import { convert, parseQuantity, type Quantity } from "../../../src/engine/workshop/quantity.ts";
import { baseUnits } from "../../../src/engine/workshop/units.ts";
import { have } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { type Check, cell, near, nearPart, same, table } from "../ledger.ts";

/** The names of NIST SP 811 as a workshop writes them. */
const written = new Map([
  ["pound-force inch (lbf.in)", "lbf.in"],
  ["pound-force foot (lbf.ft)", "lbf.ft"],
  ["ounce (avdp)-force inch (ozf.in)", "ozf.in"],
  ["kilogram-force meter (kgf.m)", "kgf.m"],
  ["kilogram-force centimetre (kgf.cm)", "kgf.cm"],
  ["pound-force (lbf)", "lbf"],
  ["ounce-force (ozf)", "ozf"],
  ["kilogram-force (kgf)", "kgf"],
  ["inch (in)", "in"],
  ["mil / thou (0.001 in)", "mil"],
  ["foot (ft)", "ft"],
  ["pound-force per square inch (psi)", "psi"],
  ["kgf/mm2", "kgf/mm2"],
  ["fluid ounce (US)", "fl oz (US)"],
  ["fluid ounce [Imperial (UK)]", "fl oz (UK)"],
  ["pint (US liquid)", "US pint"],
  ["gallon (US)", "gal (US)"],
  ["gallon [Imperial]", "imp gallon"],
  ["cubic foot per minute (cfm)", "cfm"],
  ["cubic foot", "cubic foot"],
  ["pound (avdp)", "pound"],
  ["ounce (avdp)", "ounce"],
  ["mmHg (conventional)", "mmHg"],
]);

const read = (text: string): Quantity => have(parseQuantity(text));

function factor(row: Row): Check[] {
  const one = read(`1 ${written.get(row.get("unit")!)}`);
  const printed = Number(/[\d.]+E[+-]\d+/.exec(row.get("sp811_factor")!)![0]);
  return [
    same("SI", baseUnits[one.dimension].replace("·", ".").replace("³", "3"), row.get("SI")!, "published"),
    nearPart("exact_factor", one.base, cell(row, "exact_factor"), 5e-12, "printed to 12 figures", "formula"),
    nearPart("sp811_factor", one.base, printed, 5e-7, "printed to 7 figures", "memory"),
  ];
}

function temperature(row: Row): Check[] {
  const from = read(row.get("unit")!.replace("degF", "°F"));
  const celsius = have(convert(from, "°C")).amount;
  return [
    near("exact_factor", celsius, cell(row, "exact_factor"), 1e-12, "printed to 15 figures", "formula"),
  ];
}

export const units = table(
  "units_nist_sp811.csv",
  "NIST SP 811 (2008), Appendices B.8 and B.9",
  (row) => row.get("unit")!,
  (row) => (row.get("unit")!.endsWith("degF") ? temperature(row) : factor(row)),
);
