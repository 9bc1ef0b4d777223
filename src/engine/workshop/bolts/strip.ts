/** What gives first: the screw, its threads, or those of the hole. */

import { t } from "../../words.ts";
import { deferrals, type Grounds } from "../grounds.ts";
import { bad, good, type Result } from "../result.ts";
import { stressAreaMm2 } from "../threads/dimensions.ts";
import { formOf } from "../threads/form.ts";
import { limitsOf } from "../threads/limits.ts";
import { seriesNamed } from "../threads/series.ts";
import type { ThreadSize } from "../threads/size.ts";
import { type Bearing, bearingMeanMm } from "./bearing.ts";
import { lever, twistFactor } from "./lever.ts";
import type { Material } from "./materials.ts";
import { engagementFor, shearAreasPerLength } from "./shear-area.ts";
import type { Strength } from "./strength.ts";
import { stripAssumptions, stripWarnings } from "./strip-words.ts";
import { frictionRange } from "./tighten.ts";

export interface Engagement {
  readonly size: ThreadSize;
  /** Length over which full threads of both are together, mm. */
  readonly engagementMm: number;
  readonly material: Material;
  readonly screw: Strength;
  /** In thread and under the head. The lower it is, the smaller the torque that strips. */
  readonly friction: number;
  readonly bearing: Bearing;
}

export type WeakPart = "screw breaks" | "internal strips" | "external strips";

export interface Stripping extends Grounds {
  /** Shear areas over the engagement, mm². */
  readonly areas: { readonly internal: number; readonly external: number };
  /** Pull at which each gives, N. */
  readonly loads: Readonly<Record<WeakPart, number>>;
  /** What gives first under a straight pull. */
  readonly weaker: WeakPart;
  /** The same while the screw is being turned, which twists it as well; and the torque then, N·m. */
  readonly whenTightened: { readonly weaker: WeakPart; readonly loadN: number; readonly torqueNm: number };
  /** The engagement from which the screw breaks before either thread strips, mm. */
  readonly engagementNeededMm: number;
}

export type StrippingCode = "engagement" | "friction";

/** Shear strength of a screw's own threads as a part of its tensile strength: VDI 2230, from memory (0.60 to 0.65 of steel). */
export const screwShearRatio = 0.6;

/**
 * Loads by the shear areas of FED-STD-H28/2B, at the limits where both threads just pass inspection. More engagement is never
 * weaker.
 */
export function stripping(ask: Engagement): Result<Stripping, StrippingCode> {
  const { size, engagementMm, material, screw, friction } = ask;
  if (!(engagementMm > 0 && Number.isFinite(engagementMm))) {
    return bad("engagement", t`${engagementMm} mm`, t`a length of thread above 0`);
  }
  if (!(friction >= frictionRange.least && friction <= frictionRange.greatest)) {
    return bad(
      "friction",
      String(friction),
      t`a friction from ${frictionRange.least} to ${frictionRange.greatest}`,
    );
  }
  const limits = limitsOf(size);
  const perLength = shearAreasPerLength({
    ...limits,
    pitchMm: size.pitchMm,
    angle: seriesNamed(size.series).angle,
  });
  const screwShear = screwShearRatio * screw.tensile;
  const breaks = screw.tensile * stressAreaMm2(size);
  const areas = { internal: perLength.internal * engagementMm, external: perLength.external * engagementMm };
  const loads = {
    "screw breaks": breaks,
    "internal strips": areas.internal * material.shearMPa,
    "external strips": areas.external * screwShear,
  };
  return good({
    ...{ areas, loads, weaker: weakest(loads), whenTightened: whenTightened(ask, loads) },
    engagementNeededMm: Math.max(
      engagementFor(breaks, material.shearMPa, perLength.internal),
      engagementFor(breaks, screwShear, perLength.external),
    ),
    assumptions: stripAssumptions(ask, limits.source),
    warnings: stripWarnings(ask),
    sources: sourcesOf(ask),
    deferral: deferrals.bolt,
  });
}

/** The screw, twisted as well as pulled, breaks at a smaller pull. */
function whenTightened(
  { size, friction, bearing }: Engagement,
  loads: Stripping["loads"],
): Stripping["whenTightened"] {
  const twisted = { ...loads, "screw breaks": loads["screw breaks"] / twistFactor(size, friction) };
  const weaker = weakest(twisted);
  const perLoad = lever(size, { thread: friction, head: friction }, bearingMeanMm(bearing));
  return { weaker, loadN: twisted[weaker], torqueNm: (twisted[weaker] * perLoad) / 1000 };
}

const parts = ["internal strips", "external strips", "screw breaks"] as const;

/** Equal loads: what is dearer to mend is named. */
function weakest(loads: Stripping["loads"]): WeakPart {
  return [...parts].sort((a, b) => loads[a] - loads[b])[0]!;
}

const standingWords: Readonly<Record<Material["standing"], string>> = {
  published: " (published)",
  memory: t` (from memory)`,
  given: "",
};

function sourcesOf({ size, material, screw }: Engagement): string[] {
  return [
    t`FED-STD-H28/2B, Appendix B (shear areas)`,
    `${material.name}: ${material.source}${standingWords[material.standing]}`,
    screw.source,
    t`VDI 2230-1 (torque; threads of the screw shear at 0.6 of its tensile strength, from memory)`,
    formOf(size).source,
  ];
}
