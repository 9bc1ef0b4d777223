/** What is assumed of a bolt, and what is wrong with it, in words. */

import { t } from "../../words.ts";
import { formatNumber } from "../format-quantity.ts";
import type { Friction } from "./lever.ts";
import type { StrengthKind } from "./strength.ts";
import type { Joint } from "./tighten.ts";

const kinds: Readonly<Record<StrengthKind, string>> = {
  graded: t`The bolt bears its mark and is undamaged`,
  soft: t`A soft bolt, not made to be tightened to its limit`,
  stainless: t`Stainless steel can seize in itself: grease it`,
  brass: t`Brass, hard as drawn; an old screw is often softer`,
};

/** Words for each thing that the sum takes for granted. */
export function assumptionsOf(
  joint: Joint,
  friction: Friction,
  shareOfYield: number,
  asked: "share" | "torque",
): string[] {
  const { strength, used, bearing, size } = joint;
  const state = used ? t`It is not new.` : t`It is new.`;
  const share = t`${formatNumber(shareOfYield * 100, 3)} % of the yield point of ${strength.yield} MPa`;
  return [
    `${kinds[strength.kind]}. ${state}`,
    asked === "share"
      ? t`Pull and twist together take ${share}${whyShare(joint)}.`
      : t`All of the torque goes into this one bolt.`,
    frictionWords(joint, friction),
    ...(joint.lubrication.kind === "friction" || size.series !== "ISO metric" ? [bearing.said] : []),
    t`The preload got by a torque scatters: ±25 % lubricated, ±35 % dry (NASA-STD-5020).`,
    ...(size.series === "ISO metric"
      ? []
      : [t`Property classes are of metric screws; ${strength.name} stands here for a material only.`]),
  ];
}

function whyShare({ strength, used }: Joint): string {
  if (strength.kind === "graded" && !used) return t` (VDI 2230 takes 90 % of a new graded bolt)`;
  return t` (60 % unless said otherwise: our own caution, for a bolt that is not new or not of 8.8 to 12.9)`;
}

function frictionWords({ lubrication }: Joint, { thread, head }: Friction): string {
  if (lubrication.kind === "nut-factor") {
    return t`A nut factor of ${lubrication.nutFactor} stands for a friction of ${formatNumber(thread, 2)} in thread and under the head.`;
  }
  return t`Friction ${formatNumber(thread)} in the thread and ${formatNumber(head)} under the head.`;
}

interface Shares {
  readonly shareOfYield: number;
  readonly shareOfProof: number | undefined;
}

/** VDI 2230's 90 %, and what rounding may add to it. */
const greatestUsual = 0.9 + 1e-9;

/** What goes beyond what the bolt bears. */
export function warningsOf({ strength }: Joint, { shareOfYield, shareOfProof }: Shares): string[] {
  const warnings: string[] = [];
  if (shareOfYield > 1) warnings.push(t`Beyond the yield point: the bolt stretches for good, or breaks.`);
  else if (shareOfYield > greatestUsual)
    warnings.push(t`More than 90 % of the yield point: nothing is left for the load of the joint.`);
  if (shareOfProof !== undefined && shareOfProof > 1) warnings.push(t`Beyond the proof load of the class.`);
  if (strength.kind === "brass")
    warnings.push(t`An old brass screw breaks without warning; where it matters, fit a new one.`);
  return warnings;
}
