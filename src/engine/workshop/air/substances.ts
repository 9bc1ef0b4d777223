/** Solvents of the bench, with the figures that lead to the more careful answer where sources differ. */

import { t } from "../../words.ts";
import { nearestName } from "../edit-distance.ts";
import { bad, good, type Result } from "../result.ts";
import type { ExposureLimit, Substance } from "./substance.ts";

interface Row extends Substance {
  readonly id: string;
  readonly aliases: readonly string[];
}

const guide = t`NIOSH Pocket Guide`;

const rows: readonly Row[] = [
  {
    ...{ id: "kerosene", name: t`kerosene (paraffin, lamp oil)` },
    aliases: ["paraffin", "paraffin-oil", "lamp-oil", "kerosine"],
    ...{ molarMass: 170, gravity: 0.81, lowerLimit: 0.007 },
    exposure: limit(100, "mg/m³", t`NIOSH REL`),
    ...{ flashC: 37.8, boilingC: 175 },
    source: t`${guide}, kerosene (flash point 38 to 72 °C)`,
  },
  {
    ...{ id: "white-spirit", name: t`white spirit (Stoddard solvent, mineral spirits)` },
    aliases: ["stoddard-solvent", "mineral-spirits", "mineral-spirit", "turpentine-substitute"],
    ...{ molarMass: 128, gravity: 0.78, lowerLimit: 0.008 },
    exposure: limit(350, "mg/m³", t`NIOSH REL`),
    ...{ flashC: 38.9, boilingC: 154 },
    source: t`${guide}, Stoddard solvent (limits); molar mass from the ACGIH limit, 525 mg/m³ = 100 ppm; specific gravity and lower limit from memory`,
  },
  {
    ...{ id: "ethanol", name: t`ethanol` },
    aliases: [
      "ethyl-alcohol",
      "alcohol",
      "denatured-alcohol",
      "methylated-spirit",
      "methylated-spirits",
      "meths",
    ],
    ...{ molarMass: 46.1, gravity: 0.79, lowerLimit: 0.031 },
    exposure: limit(1000, "ppm", t`NIOSH REL`),
    ...{ flashC: 12, boilingC: 78.3 },
    source: t`${guide}, ethyl alcohol; lower limit and flash point of IEC 60079-20-1:2010`,
  },
  {
    ...{ id: "isopropanol", name: t`isopropanol (propan-2-ol)` },
    aliases: ["isopropyl-alcohol", "propan-2-ol", "2-propanol", "ipa", "rubbing-alcohol"],
    ...{ molarMass: 60.1, gravity: 0.79, lowerLimit: 0.02 },
    exposure: limit(200, "ppm", t`ACGIH TLV`),
    ...{ flashC: 11.7, boilingC: 82.8 },
    source: t`${guide}, isopropyl alcohol; ACGIH TLV 200 ppm`,
  },
  {
    ...{ id: "acetone", name: t`acetone` },
    aliases: ["propanone"],
    ...{ molarMass: 58.1, gravity: 0.79, lowerLimit: 0.025 },
    exposure: limit(250, "ppm", t`NIOSH REL`),
    ...{ flashC: -20, boilingC: 56.1 },
    source: t`${guide}, acetone; flash point of IEC 60079-20-1:2010`,
  },
  {
    ...{ id: "naphtha", name: t`VM&P naphtha (ligroin)` },
    aliases: ["vm&p-naphtha", "ligroin", "benzine", "white-gas"],
    ...{ molarMass: 87, gravity: 0.76, lowerLimit: 0.012 },
    exposure: limit(350, "mg/m³", t`NIOSH REL`),
    ...{ flashC: -6.7, boilingC: 95 },
    source: t`${guide}, VM&P naphtha (molar mass 87 to 114)`,
  },
  {
    ...{ id: "petroleum-naphtha", name: t`petroleum naphtha (rubber solvent)` },
    aliases: ["rubber-solvent", "petroleum-distillates", "petroleum-spirit"],
    ...{ molarMass: 99, gravity: 0.66, lowerLimit: 0.011 },
    exposure: limit(350, "mg/m³", t`NIOSH REL`),
    ...{ flashC: -65.6, boilingC: 30 },
    source: t`${guide}, petroleum distillates (naphtha)`,
  },
];

function limit(amount: number, unit: ExposureLimit["unit"], name: string): ExposureLimit {
  return { amount, unit, name };
}

/** The ids of all that are known. */
export function substanceIds(): string[] {
  return rows.map(({ id }) => id);
}

/** The substance that a text names, by id or by a usual name; a problem says which are known and which is nearest. */
export function substanceNamed(text: string): Result<Substance, "unknown-substance"> {
  const wanted = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-")
    .slice(0, 40);
  const found = rows.find(({ id, aliases }) => id === wanted || aliases.includes(wanted));
  if (found) {
    const { id: _id, aliases: _aliases, ...substance } = found;
    return good(substance);
  }
  const names = rows.flatMap(({ id, aliases }) => [id, ...aliases]);
  const known = t`one of ${substanceIds().join(", ")}, or a substance of your own with the figures of its safety data sheet`;
  return bad("unknown-substance", text || t`nothing`, known, nearestName(names, wanted));
}
