/** Shear areas of a pair of threads: FED-STD-H28/2B, Appendix B, for any flank angle. */

import type { Limits } from "../threads/limits.ts";

/** What the formulas need; any one unit of length. */
export interface Pair
  extends Pick<Limits, "screwLeastMm" | "screwLeastPitchMm" | "nutGreatestPitchMm" | "nutGreatestMinorMm"> {
  readonly pitchMm: number;
  /** Included angle of the flanks, degrees. */
  readonly angle: number;
}

/** Area for each unit of engagement. */
export interface ShearAreas {
  /** Of the nut's threads, sheared at the tips of the screw's: π·dmin/P·[P/2 + tan(α/2)·(dmin − D2max)]. */
  readonly internal: number;
  /** Of the screw's threads, sheared at the tips of the nut's: π·D1max/P·[P/2 + tan(α/2)·(d2min − D1max)]. */
  readonly external: number;
}

export function shearAreasPerLength(pair: Pair): ShearAreas {
  const { screwLeastMm, screwLeastPitchMm, nutGreatestPitchMm, nutGreatestMinorMm } = pair;
  return {
    internal: ring(pair, screwLeastMm, screwLeastMm - nutGreatestPitchMm),
    external: ring(pair, nutGreatestMinorMm, screwLeastPitchMm - nutGreatestMinorMm),
  };
}

function ring({ pitchMm, angle }: Pair, diameter: number, beyondPitchLine: number): number {
  const halfFlank = Math.tan((angle / 2) * (Math.PI / 180));
  return ((Math.PI * diameter) / pitchMm) * Math.max(0, pitchMm / 2 + halfFlank * beyondPitchLine);
}

/** The engagement at which threads of this strength bear a load: F/(τ·area per length). */
export function engagementFor(load: number, shearStrength: number, areaPerLength: number): number {
  return load / (shearStrength * areaPerLength);
}
