/** The nouns of thread tables. */

import { t } from "../../words.ts";

export type SeriesName = "ISO metric" | "UNC" | "UNF" | "BA" | "BSW" | "BSF";

/** The name of a series in the words of the site. */
export const seriesWords = (series: SeriesName): string => (series === "ISO metric" ? t`ISO metric` : series);

/** One size of one series. Nominal figures; no tolerance is meant. */
export interface ThreadSize {
  readonly series: SeriesName;
  /** The size alone, as its series writes it: M6, 1/4, #8, 2. */
  readonly size: string;
  /** The whole designation, as it is printed: M6, M6x0.75, 1/4-20 UNC, 1/4 in BSF, 2 BA. */
  readonly designation: string;
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** Threads per inch, where the standard gives those instead of a pitch. */
  readonly tpi: number | undefined;
  /** The size alone does not say which thread is meant, because another pitch goes without saying. */
  readonly pitchNeeded: boolean;
}

export interface Series {
  readonly name: SeriesName;
  readonly standard: string;
  /** Included angle of the flanks in degrees. */
  readonly angle: number;
  readonly sizes: readonly ThreadSize[];
}

export const mmPerInch = 25.4;

/** A size that is given in inches and threads per inch. */
export function inchSize(
  series: SeriesName,
  size: string,
  designation: string,
  inches: number,
  tpi: number,
): ThreadSize {
  const [diameterMm, pitchMm] = [inMm(inches), mmPerInch / tpi];
  return { series, size, designation, diameterMm, pitchMm, tpi, pitchNeeded: false };
}

/** Without the noise of binary fractions: sizes are thousandths or sixty-fourths of an inch, six decimals of a mm at most. */
function inMm(inches: number): number {
  return Number((inches * mmPerInch).toFixed(6));
}

/** Inches of a size written as a fraction (`5/16`) or as a number size (`#8`), which ASME B1.1 puts at 0.060 + 0.013 N. */
export function inchesOf(size: string): number {
  if (size.startsWith("#")) return (60 + 13 * Number(size.slice(1))) / 1000;
  const [top = "", bottom = "1"] = size.split("/");
  return Number(top) / Number(bottom);
}
