/** What the figures that a sum asks for may be: one table for every shell that asks. */

import type { Dimension } from "../units.ts";

/** What is sensible, both ends counted in, written as people do. */
export interface Range {
  readonly dimension: Dimension;
  readonly least: string;
  readonly greatest: string;
  /** The unit in which the sum wants the figure. */
  readonly unit: string;
  /** The unit that goes without saying, where one does. */
  readonly bare?: string;
}

const length: Range = { dimension: "length", least: "0.01 mm", greatest: "1 m", unit: "mm" };
const temperature: Range = { dimension: "temperature", least: "-200 °C", greatest: "1000 °C", unit: "°C" };
/** A bare number of which the sum itself judges the range, with a word of its own. */
const judged: Range = { dimension: "number", least: "-1000000", greatest: "1000000", unit: "" };

const number = (least: string, greatest: string): Range => ({
  ...{ dimension: "number", least, greatest },
  unit: "",
});

/** By the name of the field; the options of commands have the same names. */
export const ranges = {
  diameter: length,
  pitch: length,
  tpi: number("1", "400"),
  angle: { dimension: "angle", least: "20°", greatest: "120°", unit: "°", bare: "°" },
  friction: judged,
  "head-friction": judged,
  "nut-factor": judged,
  share: judged,
  torque: { dimension: "torque", least: "0.0001 N·m", greatest: "10 kN·m", unit: "N·m" },
  bearing: length,
  hole: length,
  engagement: length,
  shear: { dimension: "pressure", least: "1 MPa", greatest: "2 GPa", unit: "MPa" },
  amount: { dimension: "volume", least: "0.01 mL", greatest: "1000 L", unit: "L" },
  room: { dimension: "volume", least: "0.001 m³", greatest: "1000000 m³", unit: "m³" },
  rate: { dimension: "flow", least: "0.001 mL/h", greatest: "1000 L/h", unit: "L/h" },
  mixing: judged,
  temperature,
  flash: temperature,
  boils: temperature,
  "molar-mass": number("2", "1000"),
  gravity: number("0.3", "4"),
  "lower-limit": number("0.01 %", "80 %"),
} as const satisfies Readonly<Record<string, Range>>;

export type RangeName = keyof typeof ranges;
