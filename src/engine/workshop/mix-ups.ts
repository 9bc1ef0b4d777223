import { baseUnits, type Dimension } from "./units.ts";

/** Dimensions that workshops confuse, with what makes the difference. */
const rows: readonly (readonly [found: Dimension, expected: Dimension, hint: string])[] = [
  ["mass", "force", "for the weight of a mass write kgf, lbf or ozf"],
  ["force", "mass", "for a mass write kg, lb or oz"],
  ["mass", "torque", "a force on an arm, such as N·m, kgf·cm or lbf·in"],
  ["force", "torque", "a force on an arm, such as N·m, kgf·cm or lbf·in"],
  ["torque", "force", "without the arm, such as N or lbf"],
  ["force", "pressure", "a force on an area, such as MPa or psi"],
  ["length", "area", "such as mm² or in²"],
  ["length", "volume", "such as m³, or length x width x height"],
  ["area", "volume", "an area times its height, such as m³"],
  ["volume", "flow", "so much in a time, such as mL/h"],
];

/** What to say to somebody who gave one dimension where another is meant; undefined where there is nothing to add. */
export function mixUp(found: Dimension, expected: Dimension): string | undefined {
  if (found === "number") return `write its unit, such as ${baseUnits[expected]}`;
  return rows.find((row) => row[0] === found && row[1] === expected)?.[2];
}
