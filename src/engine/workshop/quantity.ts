/** Quantities: a number with its unit, as people write them. */

import { t } from "../words.ts";
import { mixUp } from "./mix-ups.ts";
import { type NumeralCode, readNumeral } from "./numeral.ts";
import { bad, good, type Result } from "./result.ts";
import { findUnit, nearestUnit, unitInOtherCapitals, whichMeasure } from "./unit-names.ts";
import { type Dimension, type Unit, withArticle } from "./units.ts";

export interface Quantity {
  readonly amount: number;
  /** The unit as it is printed; "" of a bare number. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** The amount in the base unit of the dimension (`baseUnits`), to 15 significant figures: equal for 1 in and 25.4 mm. */
  readonly base: number;
}

export type QuantityCode =
  | NumeralCode
  | "too-long"
  | "unknown-unit"
  | "ambiguous-unit"
  | "compound"
  | "dimension";

/** Longer than any quantity that is meant as one, so that hostile text costs nothing. */
const longest = 100;

/** What may be written in two units, large before small: `2 h 30 min`, `1 ft 2 in`. */
const compounds: ReadonlySet<Dimension> = new Set(["time", "length", "mass"]);

/**
 * Reads a quantity: `0.9 N·m`, `8 in-lb`, `5/16 in`, `1 1/4 in`, `20 thou`, `77 °F`, `80 %`, `2 h 30 min`, a bare number.
 *
 * Numbers: see `readNumeral`, which also says what a comma means. Capitals matter in symbols (`nm` is not N·m), not in
 * words (`Inch`). `fl oz` means the US fluid ounce and is printed as such (the imperial one, 4 % smaller, is `imp fl oz`);
 * gallons, quarts and pints without US or imp are refused. Pounds and ounces are masses, except in a torque (`in-lb`),
 * where they are forces. `m` is the metre. A compound is given in its smallest unit: 2 h 30 min is 150 min.
 * With `dimension`, any other one is refused.
 */
export function parseQuantity(text: string, dimension?: Dimension): Result<Quantity, QuantityCode> {
  if (text.length > longest) return bad("too-long", text, t`at most ${longest} characters`);
  const parts = readParts(text);
  if (!parts.ok) return parts;
  const read = parts.value.length === 1 ? quantity(parts.value[0]!) : compound(text, parts.value);
  if (read.ok && dimension !== undefined && read.value.dimension !== dimension) {
    return wrongDimension(read.value, dimension);
  }
  return read;
}

/**
 * The same quantity in another unit, named in any of its spellings. Rounded to 15 significant figures: the factors are
 * good for 16, and two operations with them lose less than one.
 */
export function convert(from: Quantity, unit: string): Result<Quantity, QuantityCode> {
  const to = readUnit(unit);
  if (!to.ok) return to;
  if (to.value.dimension !== from.dimension) return wrongDimension(from, to.value.dimension);
  const amount = from.unit === to.value.unit ? from.amount : fromBase(from.base, to.value);
  if (!Number.isFinite(amount)) return bad("too-large", plain(from), t`an amount that ${unit} can express`);
  return good({ ...from, unit: to.value.unit, amount });
}

/** The size of a difference (a tolerance, a rise) in the base unit: of a temperature without the zero of its scale. */
export function spanInBase(span: Quantity): number {
  const unit = findUnit(span.unit);
  return unit === undefined ? span.base : span.amount * unit.factor;
}

interface Part {
  readonly amount: number;
  readonly unit: Unit;
}

function readParts(text: string): Result<Part[], QuantityCode> {
  const parts: Part[] = [];
  let rest = text;
  do {
    const numeral = readNumeral(rest);
    if (!numeral.ok) return numeral;
    const [name, more] = splitUnit(numeral.value.rest);
    const unit = readUnit(name);
    if (!unit.ok) return unit;
    parts.push({ amount: numeral.value.amount, unit: unit.value });
    rest = more;
  } while (rest !== "");
  return good(parts);
}

/** A unit may hold digits (`kgf/mm2`), so the whole rest is tried as one before it is cut at the next number. */
function splitUnit(rest: string): [unit: string, more: string] {
  const cut = /^(\D*[^\d\s.,¼-¾⅐-⅞])\s*([\d.,¼-¾⅐-⅞].*)$/s.exec(rest);
  return cut && findUnit(rest) === undefined ? [cut[1]!, cut[2]!] : [rest, ""];
}

function readUnit(name: string): Result<Unit, QuantityCode> {
  const unit = findUnit(name);
  if (unit) return good(unit);
  const measure = whichMeasure(name);
  if (measure) return bad("ambiguous-unit", name, measure);
  const meant = unitInOtherCapitals(name);
  if (meant) return bad("unknown-unit", name, t`${meant.unit} (capitals matter)`, meant.unit);
  const near = nearestUnit(name)?.unit;
  const hint = near ? t`${near}, the nearest unit known` : t`a unit such as N·m, mm, in, mL, °C or min`;
  return bad("unknown-unit", name, hint, near);
}

function quantity({ amount, unit }: Part): Result<Quantity, QuantityCode> {
  const base = round((amount + unit.offset) * unit.factor);
  if (!Number.isFinite(base)) return bad("too-large", String(amount), t`a number that can be reckoned with`);
  return good({ amount, unit: unit.unit, dimension: unit.dimension, base });
}

function compound(text: string, parts: readonly Part[]): Result<Quantity, QuantityCode> {
  const { unit } = parts.at(-1)!;
  if (!compounds.has(unit.dimension) || parts.some((part, place) => !continues(parts[place - 1], part))) {
    return bad("compound", text, t`one quantity, or larger and smaller unit as in 2 h 30 min`);
  }
  const factor = unit.factor;
  const size = parts.reduce((sum, part) => sum + Math.abs(part.amount) * (part.unit.factor / factor), 0);
  return quantity({ amount: round(/^\s*[-−]/.test(text) ? -size : size), unit });
}

/** A smaller unit of the same dimension, less than one of the larger, which is a whole number. */
function continues(larger: Part | undefined, part: Part): boolean {
  if (larger === undefined) return true;
  return (
    larger.unit.dimension === part.unit.dimension &&
    Number.isInteger(larger.amount) &&
    part.amount * part.unit.factor < larger.unit.factor * (1 - 1e-12)
  );
}

function fromBase(base: number, unit: Unit): number {
  return round(base / unit.factor - unit.offset);
}

function round(amount: number): number {
  return Number(amount.toPrecision(15));
}

function wrongDimension(found: Quantity, expected: Dimension): Result<never, "dimension"> {
  const hint = mixUp(found.dimension, expected);
  const wanted = hint === undefined ? withArticle(expected) : `${withArticle(expected)}: ${hint}`;
  return bad("dimension", `${plain(found)}, ${withArticle(found.dimension)}`, wanted);
}

function plain({ amount, unit }: Quantity): string {
  return `${amount} ${unit}`.trim();
}
