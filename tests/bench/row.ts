/** A line of the table that the benchmark ends with. */

export interface Row {
  readonly what: string;
  readonly measured: number;
  /** "×", "ms", "KiB"; "" for a plain number. */
  readonly unit: string;
  /** The most it may be; where neither this nor `atLeast` is given it is told without a budget. */
  readonly budget?: number;
  /** The least it may be, of a speed. */
  readonly atLeast?: number;
}

export const hasBudget = ({ budget, atLeast }: Row): boolean => budget !== undefined || atLeast !== undefined;

export const isWithin = ({ measured, budget, atLeast }: Row): boolean =>
  (budget === undefined || measured <= budget) && (atLeast === undefined || measured >= atLeast);

/** The rows as a table in plain text, with `pass`, `MISS` or nothing at the end of each. */
export function tableOf(rows: readonly Row[]): string {
  const cells = rows.map((row) => [
    row.what,
    withUnit(row.measured, row.unit),
    limitOf(row),
    hasBudget(row) ? (isWithin(row) ? "pass" : "MISS") : "",
  ]);
  const all = [["what", "measured", "budget", ""], ...cells];
  const widths = [0, 1, 2].map((column) => Math.max(...all.map((line) => line[column]!.length)));
  return all
    .map(([what, measured, budget, verdict]) =>
      `${what!.padEnd(widths[0]!)}  ${measured!.padStart(widths[1]!)}  ${budget!.padStart(widths[2]!)}  ${verdict}`.trimEnd(),
    )
    .join("\n");
}

function limitOf({ budget, atLeast, unit }: Row): string {
  if (budget !== undefined) return `≤ ${withUnit(budget, unit)}`;
  return atLeast === undefined ? "" : `≥ ${withUnit(atLeast, unit)}`;
}

function withUnit(value: number, unit: string): string {
  const rounded = value >= 100 ? Math.round(value) : Number(value.toPrecision(3));
  return `${rounded.toLocaleString("en")}${unit === "" ? "" : ` ${unit}`}`;
}

/** The middle one of an odd number of values, the lower middle one of an even number. */
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** The smallest value that at least the share `p` of the values do not exceed (nearest rank). */
export function quantile(values: readonly number[], p: number): number {
  return values.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(values.length * p) - 1)]!;
}
