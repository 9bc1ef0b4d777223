/** One figure of a sum, read and held against its range. */

import { t } from "../../words.ts";
import { significant } from "../grounds.ts";
import { parseQuantity, type QuantityCode } from "../quantity.ts";
import { bad, good, type Result } from "../result.ts";
import { findUnit } from "../unit-names.ts";
import { type Range, type RangeName, ranges } from "./ranges.ts";

/** Reads a figure in the unit of its range, to 12 significant figures: without the noise of binary fractions. */
export function readMeasure(name: RangeName, text: string): Result<number, QuantityCode | "range"> {
  const range: Range = ranges[name];
  const isBare = range.bare !== undefined && /^\s*[\d.,]+\s*$/.test(text);
  const read = parseQuantity(isBare ? `${text}${range.bare}` : text, range.dimension);
  return read.ok ? inRange(name, text, read.value.base) : read;
}

/** A figure in the unit of its range; `base` is in the base unit of the dimension, `text` is what was written. */
export function inRange(name: RangeName, text: string, base: number): Result<number, "range"> {
  const { least, greatest, unit }: Range = ranges[name];
  if (!(base >= baseOf(least) && base <= baseOf(greatest)))
    return bad("range", text, t`from ${least} to ${greatest}`);
  const { factor, offset } = findUnit(unit)!;
  return good(significant(base / factor - offset, 12));
}

function baseOf(end: string): number {
  const read = parseQuantity(end);
  return read.ok ? read.value.base : Number.NaN;
}
