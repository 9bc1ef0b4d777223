/**
 * Units that a workshop writes, with exact factors to the base unit of their dimension.
 *
 * Factors: NIST SP 811 (2008), Appendix B, worked out to every figure from the definitions 1 in = 25.4 mm,
 * 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s², 1 US gal = 231 in³, 1 imp gal = 4.54609 L.
 * A factor that has more figures than a double holds (mmHg, an ounce-force, a sixtieth) is the nearest double.
 *
 * Base units are those of the SI, except degree Celsius and degree of arc, which keep everyday figures exact.
 */
import { t } from "../words.ts";

export type Dimension =
  | "number"
  | "length"
  | "area"
  | "volume"
  | "mass"
  | "force"
  | "torque"
  | "pressure"
  | "temperature"
  | "time"
  | "angle"
  | "rotation"
  | "flow"
  | "concentration";

export const baseUnits: Readonly<Record<Dimension, string>> = {
  number: "",
  length: "m",
  area: "m²",
  volume: "m³",
  mass: "kg",
  force: "N",
  torque: "N·m",
  pressure: "Pa",
  temperature: "°C",
  time: "s",
  angle: "°",
  rotation: "r/s",
  flow: "m³/s",
  concentration: "kg/m³",
};

export interface Unit {
  /** As it is printed. A bare number has the unit "". */
  readonly unit: string;
  readonly dimension: Dimension;
  /** base = (amount + offset) × factor. Only a temperature has an offset other than 0. */
  readonly factor: number;
  readonly offset: number;
  /** Other spellings, as `foldUnit` leaves them; capitals matter. */
  readonly symbols: readonly string[];
  /** Spellings in which capitals do not matter, as `foldUnit` leaves them, in lower case. */
  readonly words: readonly string[];
}

type Row = readonly [unit: string, factor: number, symbols: string, words: string, offset?: number];

/** Spellings stand in one text each, separated by spaces: that keeps a row on a line. */
const rows: Readonly<Record<Dimension, readonly Row[]>> = {
  number: [
    ["", 1, "", ""],
    ["%", 0.01, "", "percent per·cent pct"],
    ["‰", 0.001, "", ""],
    ["ppm", 1e-6, "", "ppm"],
  ],
  length: [
    ["m", 1, "", "metre metres meter meters"],
    ["cm", 0.01, "", "centimetre centimetres centimeter centimeters"],
    ["mm", 0.001, "", "millimetre millimetres millimeter millimeters"],
    ["μm", 1e-6, "um", "micron microns micrometre micrometres micrometer micrometers"],
    ["in", 0.0254, '" ′′', "in ins inch inches"],
    ["thou", 2.54e-5, "", "thou thous mil mils"],
    ["ft", 0.3048, "' ′", "ft foot feet"],
  ],
  area: [
    ["m²", 1, "m2", "sq·m"],
    ["cm²", 1e-4, "cm2", "sq·cm"],
    ["mm²", 1e-6, "mm2", "sq·mm"],
    ["in²", 6.4516e-4, "in2", "sq·in in2"],
  ],
  volume: [
    ["m³", 1, "m3", "cu·m"],
    ["L", 0.001, "l", "litre litres liter liters"],
    ["dL", 1e-4, "dl", ""],
    ["cL", 1e-5, "cl", ""],
    ["mL", 1e-6, "ml cm3", "cc millilitre millilitres milliliter milliliters"],
    ["in³", 1.6387064e-5, "in3", "cu·in in3"],
    ["ft³", 0.028316846592, "ft3", "cu·ft ft3 cubic·foot cubic·feet"],
    ["US fl oz", 2.95735295625e-5, "", "us·fl·oz fl·oz fl·oz·us fluid·ounce fluid·ounces"],
    ["imp fl oz", 2.84130625e-5, "", "imp·fl·oz uk·fl·oz fl·oz·imp fl·oz·uk"],
    ["US pt", 4.73176473e-4, "", "us·pt pt·us us·pint us·pints"],
    ["imp pt", 5.6826125e-4, "", "imp·pt uk·pt pt·imp pt·uk imp·pint imp·pints uk·pint uk·pints"],
    ["US qt", 9.46352946e-4, "", "us·qt qt·us us·quart us·quarts"],
    ["imp qt", 1.1365225e-3, "", "imp·qt uk·qt qt·imp qt·uk imp·quart imp·quarts uk·quart uk·quarts"],
    ["US gal", 3.785411784e-3, "", "us·gal gal·us us·gallon us·gallons"],
    ["imp gal", 4.54609e-3, "", "imp·gal uk·gal gal·imp gal·uk imp·gallon imp·gallons uk·gallon uk·gallons"],
  ],
  mass: [
    ["kg", 1, "", "kilogram kilograms kilogramme kilogrammes"],
    ["g", 0.001, "", "gram grams gramme grammes"],
    ["mg", 1e-6, "", "milligram milligrams"],
    ["lb", 0.45359237, "", "lb lbs pound pounds"],
    ["oz", 0.028349523125, "", "oz ozs ounce ounces"],
  ],
  force: [
    ["N", 1, "", "newton newtons"],
    ["kN", 1000, "", "kilonewton kilonewtons"],
    ["mN", 0.001, "", ""],
    ["kgf", 9.80665, "kp", "kgf"],
    ["gf", 0.00980665, "p", "gf"],
    ["lbf", 4.4482216152605, "", "lbf"],
    ["ozf", 0.2780138509537812, "", "ozf"],
  ],
  torque: [
    ["N·m", 1, "Nm m·N", "newton·metre newton·metres newton·meter newton·meters"],
    ["kN·m", 1000, "kNm", ""],
    ["N·cm", 0.01, "Ncm cN·m cNm", ""],
    ["N·mm", 0.001, "Nmm mN·m mNm", ""],
    ["kgf·m", 9.80665, "kgfm kg·m kgm m·kgf m·kg", ""],
    ["kgf·cm", 0.0980665, "kgfcm kg·cm kgcm cm·kgf cm·kg", ""],
    ["gf·cm", 9.80665e-5, "gfcm g·cm cm·gf cm·g", ""],
    [
      "lbf·ft",
      1.3558179483314003,
      "",
      "lbf·ft ft·lbf lb·ft ft·lb ft·lbs lbs·ft foot·pound foot·pounds pound·foot",
    ],
    [
      "lbf·in",
      0.1129848290276167,
      "",
      "lbf·in in·lbf lb·in in·lb in·lbs lbs·in inch·pound inch·pounds pound·inch",
    ],
    ["ozf·in", 0.0070615518142260435, "", "ozf·in in·ozf oz·in in·oz inch·ounce inch·ounces ounce·inch"],
  ],
  pressure: [
    ["Pa", 1, "", "pascal pascals"],
    ["hPa", 100, "", ""],
    ["kPa", 1000, "", ""],
    ["MPa", 1e6, "N/mm2", ""],
    ["GPa", 1e9, "kN/mm2", ""],
    ["bar", 1e5, "", "bar bars"],
    ["mbar", 100, "", "millibar millibars"],
    ["psi", 6894.757293168362, "", "psi lbf/in2 lb/in2 lbs/in2"],
    ["kgf/mm²", 9806650, "kgf/mm2 kg/mm2", ""],
    ["kgf/cm²", 98066.5, "kgf/cm2 kg/cm2", ""],
    ["mmHg", 133.322387415, "mm·Hg", ""],
  ],
  temperature: [
    ["°C", 1, "C", "deg·c degc degrees·c celsius degrees·celsius", 0],
    ["°F", 1 / 1.8, "F", "deg·f degf degrees·f fahrenheit degrees·fahrenheit", -32],
    ["K", 1, "", "kelvin kelvins", -273.15],
  ],
  time: [
    ["s", 1, "", "sec secs second seconds"],
    ["min", 60, "", "min mins minute minutes"],
    ["h", 3600, "", "h hr hrs hour hours"],
    ["d", 86400, "", "day days"],
    ["week", 604800, "", "week weeks wk wks"],
  ],
  angle: [
    ["°", 1, "", "deg degs degree degrees"],
    ["rad", 180 / Math.PI, "", "radian radians"],
    ["turn", 360, "", "turn turns rev revs revolution revolutions"],
  ],
  rotation: [
    ["r/s", 1, "", "rps rev/s"],
    ["rpm", 1 / 60, "r/min", "rpm rev/min revs/min"],
  ],
  flow: [
    ["m³/s", 1, "m3/s", ""],
    ["m³/h", 1 / 3600, "m3/h", "m3/hr"],
    ["L/s", 0.001, "l/s", ""],
    ["L/min", 0.001 / 60, "l/min", ""],
    ["L/h", 0.001 / 3600, "l/h", "l/hr"],
    ["mL/min", 1e-6 / 60, "ml/min", "cc/min"],
    ["mL/h", 1e-6 / 3600, "ml/h", "ml/hr cc/h"],
    ["US pt/h", 4.73176473e-4 / 3600, "", "us·pt/h us·pint/hour us·pints/hour"],
    ["imp pt/h", 5.6826125e-4 / 3600, "", "imp·pt/h imp·pint/hour imp·pints/hour"],
    ["cfm", 0.028316846592 / 60, "", "cfm ft3/min cu·ft/min"],
  ],
  concentration: [
    ["kg/m³", 1, "kg/m3", ""],
    ["g/m³", 0.001, "g/m3", ""],
    ["mg/m³", 1e-6, "mg/m3", ""],
  ],
};

/** Every unit of a dimension, for lists of what may be written. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return rows[dimension].map(([unit, factor, symbols, words, offset = 0]) => ({
    unit,
    dimension,
    factor,
    offset,
    symbols: split(symbols),
    words: split(words),
  }));
}

const articled: Readonly<Record<Dimension, string>> = {
  number: t`a number`,
  length: t`a length`,
  area: t`an area`,
  volume: t`a volume`,
  mass: t`a mass`,
  force: t`a force`,
  torque: t`a torque`,
  pressure: t`a pressure`,
  temperature: t`a temperature`,
  time: t`a time`,
  angle: t`an angle`,
  rotation: t`a rotation`,
  flow: t`a flow`,
  concentration: t`a concentration`,
};

/** "a torque", "an area". */
export const withArticle = (dimension: Dimension): string => articled[dimension];

export const dimensions = Object.keys(baseUnits) as readonly Dimension[];

function split(text: string): string[] {
  return text === "" ? [] : text.split(" ");
}
