/** Limits of size of a screw and its nut, for the threads that just pass inspection: the weakest that are still right. */

import { t } from "../../words.ts";
import { dimensionsOf } from "./dimensions.ts";
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

/**
 * ISO 965-1:1998, 13.1 to 13.4, 6g and 6H, in µm for P and d in mm: es = −(15 + 11P), Td = 180P^⅔ − 3.15/√P, Td2 = 90P^0.4·d^0.1,
 * TD2 = 1.32·Td2, TD1 = 230P^0.7 (below P = 1: 433P − 190P^1.22). The standard rounds them to preferred numbers, 4 % at most.
 */
function iso({ diameterMm: d, pitchMm: p }: ThreadSize): Deviations {
  const allowance = 15 + 11 * p;
  const pitchTolerance = 90 * p ** 0.4 * d ** 0.1;
  return {
    screwMm: (allowance + 180 * p ** (2 / 3) - 3.15 / Math.sqrt(p)) / 1000,
    screwPitchMm: (allowance + pitchTolerance) / 1000,
    nutPitchMm: (1.32 * pitchTolerance) / 1000,
    nutMinorMm: (p >= 1 ? 230 * p ** 0.7 : 433 * p - 190 * p ** 1.22) / 1000,
    source: t`ISO 965-1, 6g and 6H`,
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
    source: t`ASME B1.1, classes 2A and 2B (formulas from memory)`,
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

/**
 * BS 84, Annex B, medium class, in inches, for an engagement of one diameter: T = 0.002·∛d + 0.003·√d + 0.005·√P on the effective
 * diameter, T + 0.01·√P on the outside one, and 0.3T between screw and nut up to 3/4 in. That the outside tolerance is the
 * effective one and 0.01·√P is published; the rest is from memory.
 */
function whitworth({ diameterMm, pitchMm }: ThreadSize): Deviations {
  const [d, p] = [diameterMm / mmPerInch, pitchMm / mmPerInch];
  const effective = 0.002 * Math.cbrt(d) + 0.003 * Math.sqrt(d) + 0.005 * Math.sqrt(p);
  const allowance = d <= 0.75 ? 0.3 * effective : 0;
  return {
    screwMm: mmPerInch * (allowance + effective + 0.01 * Math.sqrt(p)),
    screwPitchMm: mmPerInch * (allowance + effective),
    nutPitchMm: mmPerInch * effective,
    nutMinorMm: mmPerInch * (0.2 * p + whitworthNut(1 / p)),
    source: t`BS 84, medium class (formulas from memory)`,
  };
}

/** What the minor diameter of a nut may have beyond 0.2P, in: BS 84, from memory. */
function whitworthNut(tpi: number): number {
  if (tpi > 25) return 0.004;
  return tpi > 21 ? 0.005 : 0.007;
}

/** The finest size that has an allowance between screw and nut: BS 93. */
const coarseBa = 10;

/** BS 93:2008, Annex B, normal class: published. */
function ba({ pitchMm: p, size }: ThreadSize): Deviations {
  const isCoarse = Number(size) <= coarseBa;
  const allowance = isCoarse ? 0.025 : 0;
  return {
    screwMm: allowance + (isCoarse ? 0.2 : 0.25) * p,
    screwPitchMm: allowance + 0.1 * p + 0.025,
    nutPitchMm: 0.12 * p + 0.03,
    nutMinorMm: 0.375 * p,
    source: t`BS 93, Annex B, normal class`,
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
