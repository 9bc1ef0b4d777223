/** Words for the codes of the Globally Harmonized System (UN GHS, annexes 1 and 3). */
import type { GhsPictogram } from "../src/model/sheet.ts";

/** What each pictogram shows, by its code. */
export const pictogramNames: Readonly<Record<GhsPictogram, string>> = {
  GHS01: "exploding bomb",
  GHS02: "flame",
  GHS03: "flame over circle",
  GHS04: "gas cylinder",
  GHS05: "corrosion",
  GHS06: "skull and crossbones",
  GHS07: "exclamation mark",
  GHS08: "health hazard",
  GHS09: "environment",
};

/**
 * Texts of the statements that a workshop's substances commonly bear (GHS annex 3), in British spelling. A code that is not
 * here is printed alone, and the supplier's label and data sheet decide in any case.
 */
export const statementTexts: ReadonlyMap<string, string> = new Map([
  ["H222", "Extremely flammable aerosol"],
  ["H223", "Flammable aerosol"],
  ["H224", "Extremely flammable liquid and vapour"],
  ["H225", "Highly flammable liquid and vapour"],
  ["H226", "Flammable liquid and vapour"],
  ["H227", "Combustible liquid"],
  ["H228", "Flammable solid"],
  ["H229", "Pressurized container: may burst if heated"],
  ["H290", "May be corrosive to metals"],
  ["H302", "Harmful if swallowed"],
  ["H304", "May be fatal if swallowed and enters airways"],
  ["H312", "Harmful in contact with skin"],
  ["H314", "Causes severe skin burns and eye damage"],
  ["H315", "Causes skin irritation"],
  ["H317", "May cause an allergic skin reaction"],
  ["H318", "Causes serious eye damage"],
  ["H319", "Causes serious eye irritation"],
  ["H332", "Harmful if inhaled"],
  ["H335", "May cause respiratory irritation"],
  ["H336", "May cause drowsiness or dizziness"],
  ["H350", "May cause cancer"],
  ["H351", "Suspected of causing cancer"],
  ["H361", "Suspected of damaging fertility or the unborn child"],
  ["H372", "Causes damage to organs through prolonged or repeated exposure"],
  ["H373", "May cause damage to organs through prolonged or repeated exposure"],
  ["H400", "Very toxic to aquatic life"],
  ["H410", "Very toxic to aquatic life with long-lasting effects"],
  ["H411", "Toxic to aquatic life with long-lasting effects"],
  ["H412", "Harmful to aquatic life with long-lasting effects"],
  ["H413", "May cause long-lasting harmful effects to aquatic life"],
  ["EUH066", "Repeated exposure may cause skin dryness or cracking"],
]);

/** "H226 Flammable liquid and vapour". */
export function statement(code: string): string {
  const text = statementTexts.get(code);
  return text === undefined ? code : `${code} ${text}`;
}
