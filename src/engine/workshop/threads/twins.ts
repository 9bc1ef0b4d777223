/** Threads that seem to go together and must not be mixed. */

import { t } from "../../words.ts";
import { formatNumber } from "../format-quantity.ts";
import { allSeries, seriesNamed } from "./series.ts";
import type { ThreadSize } from "./size.ts";

/** Two sizes of different series whose diameters and pitches are so near that a screw enters the other's hole. */
export interface Twins {
  readonly one: ThreadSize;
  readonly other: ThreadSize;
}

/** Logarithms of the ratio up to which diameters and pitches are near: M5 and #10-32 are, 5/16 in BSF and UNF, 1/2 in BSW and UNC. */
const near = { diameter: 0.04, pitch: 0.09 };

/** The near twins of a size, nearest first. */
export function twinsOf(one: ThreadSize): Twins[] {
  return allSeries()
    .filter(({ name }) => name !== one.series)
    .flatMap(({ sizes }) => sizes)
    .filter((other) => apart(one, other, "diameterMm") <= near.diameter)
    .filter((other) => apart(one, other, "pitchMm") <= near.pitch)
    .filter((other) => !sameProfile(one, other))
    .sort((a, b) => distance(one, a) - distance(one, b))
    .map((other) => ({ one, other }));
}

function apart(one: ThreadSize, other: ThreadSize, what: "diameterMm" | "pitchMm"): number {
  return Math.abs(Math.log(other[what] / one[what]));
}

function distance(one: ThreadSize, other: ThreadSize): number {
  return apart(one, other, "diameterMm") + apart(one, other, "pitchMm");
}

/** UNC and UNF share no size, but nothing would be wrong with one that did. */
function sameProfile(one: ThreadSize, other: ThreadSize): boolean {
  const alike = one.diameterMm === other.diameterMm && one.pitchMm === other.pitchMm;
  return alike && seriesNamed(one.series).angle === seriesNamed(other.series).angle;
}

/** "0 BA and M6 must not be mixed: the same diameter; the same pitch; flanks of 47.5° against 60°. …" */
export function twinWords({ one, other }: Twins): string {
  const [angle, otherAngle] = [one, other].map(({ series }) => seriesNamed(series).angle);
  const flanks =
    angle === otherAngle ? t`the same flanks, ${angle!}°` : t`flanks of ${angle!}° against ${otherAngle!}°`;
  const differences = [
    differ("diameter", one.diameterMm, other.diameterMm),
    differ("pitch", one.pitchMm, other.pitchMm),
    flanks,
  ];
  return t`${one.designation} and ${other.designation} must not be mixed: ${differences.join("; ")}. One enters the other for a few turns, binds or sits loose, and spoils both.`;
}

function differ(what: string, one: number, other: number): string {
  const difference = Math.abs(one - other);
  if (difference < 5e-4) return t`the same ${what}, ${formatNumber(one)} mm`;
  return t`${what} ${formatNumber(one)} mm against ${formatNumber(other)} mm`;
}
