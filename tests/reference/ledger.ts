/** How a row of a reference table is held against the engine: what, how near, why so near, and how far to trust the row. */

import { type Row, readTable } from "../engine/workshop/table.ts";

/**
 * Published: printed in the source. Formula: worked out from the standard's formula. Memory: recalled, and good only as
 * far as the engine and other rows agree with it.
 */
export type Standing = "published" | "formula" | "memory";

export interface Check {
  /** What is compared; where it is a column, its name. */
  readonly of: string;
  readonly found: number | string;
  readonly expected: number | string;
  /** How far apart figures may be; 0 where they must be the same. */
  readonly within: number;
  /** Why so far. */
  readonly because: string;
  readonly standing: Standing;
}

export interface Table {
  /** In tests/reference/trade. */
  readonly file: string;
  /** The standard, handbook or data set, with its clause. */
  readonly source: string;
  readonly rows: readonly Row[];
  name(row: Row): string;
  /** At least one for every row. */
  checks(row: Row): readonly Check[];
}

/** A table of tests/reference/trade with its rows read. */
export function table(
  file: string,
  source: string,
  name: Table["name"],
  checks: Table["checks"],
  rows: readonly Row[] = readTable(file),
): Table {
  return { file, source, rows, name, checks };
}

/** Two figures that may differ by so much. */
export function near(
  of: string,
  found: number,
  expected: number,
  within: number,
  because: string,
  standing: Standing,
): Check {
  return { of, found, expected, within, because, standing };
}

/** Two figures that may differ by a part of the expected one. */
export function nearPart(
  of: string,
  found: number,
  expected: number,
  part: number,
  because: string,
  standing: Standing,
): Check {
  return near(of, found, expected, part * Math.abs(expected), because, standing);
}

/** Two that must be the same. */
export function same(
  of: string,
  found: number | string,
  expected: number | string,
  standing: Standing,
): Check {
  return { of, found, expected, within: 0, because: "the same text or figure", standing };
}

/** A figure that must not be above another. */
export function atMost(of: string, found: number, limit: number, because: string, standing: Standing): Check {
  return { of, found: Math.max(found, limit), expected: limit, within: 0, because, standing };
}

/** The number at the beginning of a cell; NaN, which fails every check, where there is none. */
export function cell(row: Row, name: string): number {
  return Number.parseFloat(row.get(name) ?? "");
}

/** Half a unit of the last figure that a cell prints, and a hair for binary fractions. */
export function halfUnit(row: Row, name: string): number {
  const decimals = /\.(\d+)/.exec(row.get(name) ?? "")?.[1]?.length ?? 0;
  return 0.5001 * 10 ** -decimals;
}

/** Agrees with a printed cell to its last figure. */
export function asPrinted(row: Row, name: string, found: number, standing: Standing): Check {
  const because = "half a unit of the last figure that is printed";
  return near(name, found, cell(row, name), halfUnit(row, name), because, standing);
}
