/** Limits of size of a screw and its nut, for the threads that just pass inspection: the weakest that are still right. */

import { dimensionsOf } from "./dimensions.ts";
import { leastDiameterMm } from "./screw-tolerance.ts";
import { mmPerInch, type SeriesName, type ThreadSize } from "./size.ts";

/** Lengths in mm. */
export interface Limits {
  /** Least outside and pitch diameter of the screw. */
  readonly screwLeastMm: number;
  readonly screwLeastPitchMm: number;
  /** Greatest pitch and minor diameter of the nut. */
  readonly nutGreatestPitchMm: number;
  readonly nutGreatestMinorMm: number;
  readonly source: string;
}

/** What the limits are away from the basic sizes, mm. */
interface Deviations {
  readonly screwMm: number;
  readonly screwPitchMm: number;
  readonly nutPitchMm: number;
  readonly nutMinorMm: number;
  readonly source: string;
}

/** ISO 965-1, 6g and 6H: formulas from memory, checked by M6 (d2 min 5.212, D2 max 5.500, D1 max 5.153 mm). */
function iso(size: ThreadSize): Deviations {
  const { diameterMm: d, pitchMm: p } = size;
  const pitchTolerance = 90 * p ** 0.4 * d ** 0.1;
  return {
    screwMm: d - leastDiameterMm(size),
    screwPitchMm: (15 + 11 * p + pitchTolerance) / 1000,
    nutPitchMm: (1.32 * pitchTolerance) / 1000,
    nutMinorMm: (p >= 1 ? 230 * p ** 0.7 : 433 * p - 190 * p ** 1.22) / 1000,
    source: "ISO 965-1, 6g and 6H (formulas from memory)",
  };
}

/** ASME B1.1, classes 2A and 2B, in inches: formulas from memory, checked by the limits of 1.500-8 UN in FED-STD-H28/2B, 90.1. */
function unified({ diameterMm, pitchMm }: ThreadSize): Deviations {
  const [d, p] = [diameterMm / mmPerInch, pitchMm / mmPerInch];
  const pitchTolerance = unifiedPitchTolerance(d, p);
  const allowance = 0.3 * pitchTolerance;
  return {
    screwMm: mmPerInch * (allowance + 0.06 * p ** (2 / 3)),
    screwPitchMm: mmPerInch * (allowance + pitchTolerance),
    nutPitchMm: mmPerInch * 1.3 * pitchTolerance,
    nutMinorMm: mmPerInch * unifiedMinorTolerance(d, p),
    source: "ASME B1.1, classes 2A and 2B (formulas from memory)",
  };
}

/** Of class 2A for an engagement of one diameter, in. */
function unifiedPitchTolerance(d: number, p: number): number {
  return 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * p ** (2 / 3);
}

function unifiedMinorTolerance(d: number, p: number): number {
  const large = 0.25 * p - 0.4 * p ** 2;
  if (d >= 0.25) return large;
  return Math.min(0.394 * p, Math.max(large, 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002));
}

/** BS 84, medium fit, in inches, for an engagement of one diameter: formulas from memory. */
function whitworth({ diameterMm, pitchMm }: ThreadSize): Deviations {
  const [d, p] = [diameterMm / mmPerInch, pitchMm / mmPerInch];
  const effective = 0.002 * Math.cbrt(d) + 0.003 * Math.sqrt(d) + 0.005 * Math.sqrt(p);
  return {
    screwMm: mmPerInch * (effective + 0.01 * Math.sqrt(p)),
    screwPitchMm: mmPerInch * effective,
    nutPitchMm: mmPerInch * effective,
    nutMinorMm: mmPerInch * (0.2 * p + 0.005),
    source: "BS 84, medium fit (formulas from memory)",
  };
}

/** BS 93, normal class: formulas from memory. */
function ba({ pitchMm: p }: ThreadSize): Deviations {
  return {
    screwMm: 0.2 * p,
    screwPitchMm: 0.1 * p + 0.025,
    nutPitchMm: 0.12 * p + 0.03,
    nutMinorMm: 0.375 * p,
    source: "BS 93, normal class (formulas from memory)",
  };
}

const rows: Readonly<Record<SeriesName, (size: ThreadSize) => Deviations>> = {
  "ISO metric": iso,
  UNC: unified,
  UNF: unified,
  BA: ba,
  BSW: whitworth,
  BSF: whitworth,
};

/** The limits of a new screw and nut of medium fit. Old and worn threads are below them. */
export function limitsOf(size: ThreadSize): Limits {
  const { screwMm, screwPitchMm, nutPitchMm, nutMinorMm, source } = rows[size.series](size);
  const { pitchDiameterMm, minorDiameterMm } = dimensionsOf(size);
  return {
    screwLeastMm: size.diameterMm - screwMm,
    screwLeastPitchMm: pitchDiameterMm - screwPitchMm,
    nutGreatestPitchMm: pitchDiameterMm + nutPitchMm,
    nutGreatestMinorMm: minorDiameterMm + nutMinorMm,
    source,
  };
}
