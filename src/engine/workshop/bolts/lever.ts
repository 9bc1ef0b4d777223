/** How torque and pull go together in a thread. */

import { pitchDiameterMm, stressDiameterMm } from "../threads/dimensions.ts";
import { seriesNamed } from "../threads/series.ts";
import type { ThreadSize } from "../threads/size.ts";

export interface Friction {
  readonly thread: number;
  readonly head: number;
}

/** Figures that VDI 2230 prints rounded for flanks of 60°: 1/2π as 0.16, 1/(2 cos 30°) as 0.58, 1/cos 30° as 1.155. */
const vdi = { pitch: 0.16, flank: 0.58, wedge: 1.155 };

/**
 * Torque in N·mm for each N of pull: 0.16P + 0.58·d2·µG + Dkm/2·µK (VDI 2230-1). For flanks other than 60° the exact form,
 * `exactLever`.
 */
export function lever(size: ThreadSize, friction: Friction, bearingMean: number): number {
  const { angle } = seriesNamed(size.series);
  const d2 = pitchDiameterMm(size);
  const head = (bearingMean / 2) * friction.head;
  if (angle === 60) return vdi.pitch * size.pitchMm + vdi.flank * d2 * friction.thread + head;
  return exactLever(size.pitchMm, d2, angle, friction.thread) + head;
}

/** d2/2·tan(φ + ρ′) with tan φ = P/(π·d2) and tan ρ′ = µ/cos(α/2): the share of the thread, without the head. */
export function exactLever(pitch: number, meanDiameter: number, angle: number, friction: number): number {
  const slope = Math.atan(pitch / (Math.PI * meanDiameter));
  return (meanDiameter / 2) * Math.tan(slope + Math.atan(wedge(angle) * friction));
}

/** By how much a flank presses harder than it is pulled: 1/cos(α/2). */
function wedge(angle: number): number {
  return 1 / Math.cos((angle / 2) * (Math.PI / 180));
}

/**
 * By how much twisting raises the stress above that of the pull alone, by von Mises, fully plastic in torsion:
 * √(1 + 3·[1.5·(d2/ds)·(P/(π·d2) + 1.155µ)]²) (VDI 2230-1).
 */
export function twistFactor(size: ThreadSize, threadFriction: number): number {
  const d2 = pitchDiameterMm(size);
  const { angle } = seriesNamed(size.series);
  const slope = size.pitchMm / (Math.PI * d2) + (angle === 60 ? vdi.wedge : wedge(angle)) * threadFriction;
  return Math.sqrt(1 + 3 * (1.5 * (d2 / stressDiameterMm(size)) * slope) ** 2);
}

/**
 * The friction, the same in thread and under the head, for which the lever is K·d: what a nut factor stands for. Linear form
 * of the lever; 0 or less where no friction at all gives so little.
 */
export function frictionOfNutFactor(size: ThreadSize, nutFactor: number, bearingMean: number): number {
  const flank = wedge(seriesNamed(size.series).angle) / 2;
  const withoutFriction = size.pitchMm / (2 * Math.PI);
  return (nutFactor * size.diameterMm - withoutFriction) / (flank * pitchDiameterMm(size) + bearingMean / 2);
}

/** Short form: T = K·F·d. In N·m for kN and mm; any units go together so. */
export function torqueOfNutFactor(nutFactor: number, preload: number, diameter: number): number {
  return nutFactor * preload * diameter;
}

/** K of the short form: T/(F·d). */
export function nutFactorOf(torque: number, preload: number, diameter: number): number {
  return torque / (preload * diameter);
}
