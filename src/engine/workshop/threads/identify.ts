/** Which thread a screw is likely to have. */

import { limitsOf } from "./limits.ts";
import { allSeries } from "./series.ts";
import type { Series, ThreadSize } from "./size.ts";

/** What was measured on a screw: outside diameter and pitch, mm; the flank angle in degrees where somebody has seen it. */
export interface Measured {
  readonly diameterMm: number;
  readonly pitchMm: number;
  readonly angle?: number | undefined;
}

export interface Candidate {
  readonly size: ThreadSize;
  readonly standard: string;
  readonly angle: number;
  /** Measured less nominal: at or below 0 for a real screw. */
  readonly diameterErrorMm: number;
  readonly pitchErrorMm: number;
  /** The pitch is this part of the nominal one away: 0.01 is one per cent too coarse. */
  readonly pitchErrorPart: number;
}

export interface Identification {
  /** Sizes that what was measured can be, nearest first; those that only the flank angle tells apart stand together. */
  readonly candidates: readonly Candidate[];
  /** Where none fits: the nearest, for comparison only. */
  readonly nearest: readonly Candidate[];
}

/** A caliper on a worn crest reads this much too large at most, mm. */
const tooLarge = 0.03;
/** A pitch gauge or a rule over ten threads is wrong by this part at most: BA pitches stand 10 % apart. */
const pitchWrong = 0.04;
/** A worn screw may be below its least diameter by this part of the tolerance. */
const wear = 1.5;
/**
 * What the ranking takes as usual: an error of pitch (a part), a reading too large (mm), a screw under nominal (a part of the
 * pitch, half of what tolerances allow). The same for all series, so that sizes which measure the same are equally near.
 */
const usual = { pitch: 0.01, over: 0.015, under: 0.1 };
/** Flank angles are told apart within this many degrees: 55 and 60 are 5 apart. */
const angleWrong = 2;
const compared = 3;
const diameterWeight = 10;

/**
 * Candidates for a measured screw, of all series. The diameter of a screw is at or under nominal: by the tolerance of
 * its series (`limits.ts`), half as much again for wear. O(sizes).
 */
export function identifyThread(measured: Measured): Identification {
  const all = allSeries().flatMap((series) => series.sizes.map((size) => compare(size, series, measured)));
  const candidates = all.filter((one) => fits(one, measured)).sort((a, b) => cost(a) - cost(b));
  return { candidates, nearest: candidates.length === 0 ? mostAlike(all) : [] };
}

/** For the eye: the diameter is what is seen first. */
function mostAlike(all: readonly Candidate[]): Candidate[] {
  const unlike = ({ diameterErrorMm, size, pitchErrorPart }: Candidate): number =>
    diameterWeight * Math.abs(diameterErrorMm / size.diameterMm) + Math.abs(pitchErrorPart);
  return [...all].sort((a, b) => unlike(a) - unlike(b)).slice(0, compared);
}

function compare(size: ThreadSize, { standard, angle }: Series, measured: Measured): Candidate {
  const pitchErrorMm = measured.pitchMm - size.pitchMm;
  return {
    ...{ size, standard, angle },
    diameterErrorMm: measured.diameterMm - size.diameterMm,
    ...{ pitchErrorMm, pitchErrorPart: pitchErrorMm / size.pitchMm },
  };
}

function fits(one: Candidate, { angle }: Measured): boolean {
  return (
    Math.abs(one.pitchErrorPart) <= pitchWrong &&
    one.diameterErrorMm <= tooLarge &&
    -one.diameterErrorMm <= wear * play(one.size) &&
    (angle === undefined || Math.abs(angle - one.angle) <= angleWrong)
  );
}

/** Rounded, so that the noise of binary fractions does not part sizes that are equally near. */
function cost({ size, diameterErrorMm, pitchErrorPart }: Candidate): number {
  const scale = diameterErrorMm > 0 ? usual.over : usual.under * size.pitchMm;
  return Number(((diameterErrorMm / scale) ** 2 + (pitchErrorPart / usual.pitch) ** 2).toFixed(6));
}

function play(size: ThreadSize): number {
  return size.diameterMm - limitsOf(size).screwLeastMm;
}
