/** What is assumed of two threads that hold each other, and what is wrong with them, in words. */

import { t } from "../../words.ts";
import { formatNumber } from "../format-quantity.ts";
import type { Engagement, WeakPart } from "./strip.ts";

/** What gives first, in words. */
export const weakWords: Readonly<Record<WeakPart, string>> = {
  "screw breaks": t`the screw breaks`,
  "internal strips": t`the thread in the hole strips`,
  "external strips": t`the thread of the screw strips`,
};

/** Beyond this many diameters the first threads bear nearly all: common practice. */
const longEngagement = 1.5;

export function stripAssumptions(ask: Engagement, limits: string): string[] {
  const { material, screw, friction, bearing } = ask;
  return [
    t`Both threads are whole and just pass inspection: ${limits}. Worn or half-stripped ones hold less.`,
    t`The hole is in ${material.name}, which shears at ${formatNumber(material.shearMPa)} MPa; the screw, ${screw.name}, has ${screw.tensile} MPa.`,
    t`All engaged threads bear alike; a thin wall around the hole, which spreads, is not reckoned with.`,
    t`Torque: friction ${formatNumber(friction)} in thread and under the head; with more of it the same torque pulls less. ${bearing.said}`,
  ];
}

export function stripWarnings({ size, engagementMm, material, screw }: Engagement): string[] {
  const warnings: string[] = [];
  if (engagementMm < size.pitchMm)
    warnings.push(t`Less than one whole thread is engaged: take no figure from this.`);
  if (engagementMm > longEngagement * size.diameterMm) {
    warnings.push(
      t`Beyond ${longEngagement} diameters of engagement the first threads bear nearly all: the sum flatters.`,
    );
  }
  if (material.warning !== undefined) warnings.push(material.warning);
  if (screw.kind === "brass")
    warnings.push(t`An old brass screw breaks without warning; where it matters, fit a new one.`);
  return warnings;
}
