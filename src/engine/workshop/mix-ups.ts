import { t } from "../words.ts";
import { baseUnits, type Dimension } from "./units.ts";

/** Dimensions that workshops confuse, with what makes the difference. */
const rows: readonly (readonly [found: Dimension, expected: Dimension, hint: string])[] = [
  ["mass", "force", t`for the weight of a mass write kgf, lbf or ozf`],
  ["force", "mass", t`for a mass write kg, lb or oz`],
  ["mass", "torque", t`a force on an arm, such as N·m, kgf·cm or lbf·in`],
  ["force", "torque", t`a force on an arm, such as N·m, kgf·cm or lbf·in`],
  ["torque", "force", t`without the arm, such as N or lbf`],
  ["force", "pressure", t`a force on an area, such as MPa or psi`],
  ["length", "area", t`such as mm² or in²`],
  ["length", "volume", t`such as m³, or length x width x height`],
  ["area", "volume", t`an area times its height, such as m³`],
  ["volume", "flow", t`so much in a time, such as mL/h`],
];

/** What to say to somebody who gave one dimension where another is meant; undefined where there is nothing to add. */
export function mixUp(found: Dimension, expected: Dimension): string | undefined {
  if (found === "number") return t`write its unit, such as ${baseUnits[expected]}`;
  return rows.find((row) => row[0] === found && row[1] === expected)?.[2];
}
