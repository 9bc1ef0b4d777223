/** Preload and tightening torque, and the way back. */

import { t } from "../../words.ts";
import { deferrals, type Grounds } from "../grounds.ts";
import { bad, good, type Result } from "../result.ts";
import { stressAreaMm2 } from "../threads/dimensions.ts";
import { formOf } from "../threads/form.ts";
import type { ThreadSize } from "../threads/size.ts";
import { type Bearing, bearingMeanMm } from "./bearing.ts";
import {
  type Friction,
  frictionOfNutFactor,
  lever,
  nutFactorOf,
  torqueOfNutFactor,
  twistFactor,
} from "./lever.ts";
import type { Strength } from "./strength.ts";
import { assumptionsOf, warningsOf } from "./tighten-words.ts";

/** How torque turns into pull: coefficients of friction, or a nut factor that stands for them. */
export type Lubrication =
  | { readonly kind: "friction"; readonly thread: number; readonly head: number }
  | { readonly kind: "nut-factor"; readonly nutFactor: number };

export interface Joint {
  readonly size: ThreadSize;
  readonly strength: Strength;
  readonly lubrication: Lubrication;
  readonly bearing: Bearing;
  /** Not new: tightened before, or of unknown past. */
  readonly used: boolean;
}

export interface Tightening extends Grounds {
  readonly preloadN: number;
  readonly torqueNm: number;
  readonly stressAreaMm2: number;
  /** Stress of pull and twist together, as a part of the yield point. */
  readonly shareOfYield: number;
  /** The pull as a part of the proof load; undefined where the standard has no proof stress. */
  readonly shareOfProof: number | undefined;
  /** K of T = K·F·d. */
  readonly nutFactor: number;
}

/** Named after the field that each is about. */
export type TighteningCode = "friction" | "head-friction" | "nut-factor" | "share" | "torque";

/** Below: slipperier than solid lubricant (VDI 2230, class A, from 0.04). Above: threads that seize. */
export const frictionRange = { least: 0.03, greatest: 0.6 };
/** Published nut factors lie between 0.09 and 0.5. */
export const nutFactorRange = { least: 0.04, greatest: 0.8 };

/** How much of the yield point is used where nobody says: 0.9 of new graded bolts (VDI 2230); of all else our own caution. */
export function usualShare({ strength, used }: Pick<Joint, "strength" | "used">): number {
  return strength.kind === "graded" && !used ? 0.9 : 0.6;
}

/**
 * Torque for a share of the yield point: F = share·Rp·As/twist, T = F·lever (VDI 2230-1; with a nut factor T = K·F·d). Grows
 * with the share; with more friction the preload falls.
 */
export function tighten(joint: Joint, share = usualShare(joint)): Result<Tightening, TighteningCode> {
  if (!(share > 0 && share <= 1))
    return bad("share", String(share), t`a share of the yield point, above 0 and at most 1`);
  const friction = frictionOf(joint);
  if (!friction.ok) return friction;
  const twist = twistFactor(joint.size, friction.value.thread);
  const preloadN = (share * joint.strength.yield * stressAreaMm2(joint.size)) / twist;
  return good(answer(joint, friction.value, preloadN, "share"));
}

/** What a torque does: preload, and the shares of yield and proof load that it takes. */
export function pullOf(joint: Joint, torqueNm: number): Result<Tightening, TighteningCode> {
  if (!(torqueNm > 0 && Number.isFinite(torqueNm)))
    return bad("torque", `${torqueNm} N·m`, t`a torque above 0`);
  const friction = frictionOf(joint);
  if (!friction.ok) return friction;
  return good(answer(joint, friction.value, (torqueNm * 1000) / leverOf(joint, friction.value), "torque"));
}

function answer(joint: Joint, friction: Friction, preloadN: number, asked: "share" | "torque"): Tightening {
  const { size, strength } = joint;
  const area = stressAreaMm2(size);
  const torqueNm = (preloadN * leverOf(joint, friction)) / 1000;
  const shares = {
    shareOfYield: (preloadN * twistFactor(size, friction.thread)) / (strength.yield * area),
    shareOfProof: strength.proof === undefined ? undefined : preloadN / (strength.proof * area),
  };
  return {
    preloadN,
    torqueNm,
    nutFactor: nutFactorOf(torqueNm, preloadN / 1000, size.diameterMm),
    stressAreaMm2: area,
    ...shares,
    assumptions: assumptionsOf(joint, friction, shares.shareOfYield, asked),
    warnings: warningsOf(joint, shares),
    sources: [
      joint.lubrication.kind === "nut-factor" ? t`T = K·F·d; preload by VDI 2230-1` : t`VDI 2230-1`,
      strength.source,
      formOf(size).source,
    ],
    deferral: deferrals.bolt,
  };
}

function leverOf({ size, lubrication, bearing }: Joint, friction: Friction): number {
  if (lubrication.kind === "nut-factor") return torqueOfNutFactor(lubrication.nutFactor, 1, size.diameterMm);
  return lever(size, friction, bearingMeanMm(bearing));
}

function frictionOf({
  size,
  lubrication,
  bearing,
}: Joint): Result<Friction, "friction" | "head-friction" | "nut-factor"> {
  if (lubrication.kind === "friction") return soundFriction(lubrication);
  const { nutFactor } = lubrication;
  const { least, greatest } = nutFactorRange;
  if (!(nutFactor >= least && nutFactor <= greatest)) {
    return bad(
      "nut-factor",
      String(nutFactor),
      t`a nut factor from ${least} to ${greatest}: 0.2 is usual dry`,
    );
  }
  const friction = frictionOfNutFactor(size, nutFactor, bearingMeanMm(bearing));
  if (friction >= frictionRange.least) return good({ thread: friction, head: friction });
  const expected = t`more: in ${size.designation} it leaves less than ${frictionRange.least} for friction`;
  return bad("nut-factor", String(nutFactor), expected);
}

function soundFriction({ thread, head }: Friction): Result<Friction, "friction" | "head-friction"> {
  const { least, greatest } = frictionRange;
  const isWrong = (one: number): boolean => !(one >= least && one <= greatest);
  const expected = t`a friction from ${least} to ${greatest}: 0.10 greased, 0.15 oiled, 0.2 or more dry`;
  if (isWrong(thread)) return bad("friction", String(thread), expected);
  return isWrong(head) ? bad("head-friction", String(head), expected) : good({ thread, head });
}
