/** Vapour from a spill or a pan, spread over a room. */

import { t } from "../../words.ts";
import { deferrals, type Grounds, roundedUp } from "../grounds.ts";
import { bad, good, type Result } from "../result.ts";
import { flammabilitySource, type GhsCategory, ghsCategory } from "./flammability.ts";
import { isWorkshopWarm, mgPerLitre, temperatureWords, vapourPerLitre } from "./gas.ts";
import type { Substance } from "./substance.ts";
import { vapourAssumptions, vapourWarnings } from "./vapour-words.ts";

export interface Spill {
  readonly substance: Substance;
  /** Litres of liquid that evaporate. */
  readonly litres: number;
  readonly roomM3: number;
  readonly celsius: number;
}

/** All amounts are rounded up to four figures. */
export interface Vapour extends Grounds {
  readonly vapourL: number;
  readonly ppm: number;
  readonly mgPerM3: number;
  /** Of the lower flammable limit; at 1 the whole room can explode. */
  readonly shareOfLowerLimit: number;
  /** Of the exposure limit, where one is known. */
  readonly shareOfExposureLimit: number | undefined;
  /** How much air the vapour makes flammable if it stays together, m³. */
  readonly flammableAirM3: number;
  readonly category: GhsCategory | undefined;
}

export type VapourCode = "amount" | "room" | "temperature";

const figures = 4;

/** The vapour if all of the liquid evaporates and none leaves the room: the worst for the room's average. */
export function vapourOf(spill: Spill): Result<Vapour, VapourCode> {
  const { substance, litres, roomM3, celsius } = spill;
  if (!isSize(litres)) return bad("amount", `${litres} L`, t`an amount above 0`);
  if (!isSize(roomM3)) return bad("room", `${roomM3} m³`, t`a room above 0`);
  if (!isWorkshopWarm(celsius)) return bad("temperature", `${celsius} °C`, temperatureWords);
  const vapourL = litres * vapourPerLitre(substance, celsius);
  const part = vapourL / (roomM3 * 1000);
  const { exposure, lowerLimit } = substance;
  const mgPerM3 = (litres * mgPerLitre(substance)) / roomM3;
  const shares = {
    shareOfLowerLimit: roundedUp(part / lowerLimit, figures),
    shareOfExposureLimit:
      exposure && roundedUp((exposure.unit === "ppm" ? part * 1e6 : mgPerM3) / exposure.amount, figures),
  };
  const flammableAirM3 = roundedUp(vapourL / 1000 / lowerLimit, figures);
  return good({
    vapourL: roundedUp(vapourL, figures),
    ppm: roundedUp(part * 1e6, figures),
    mgPerM3: roundedUp(mgPerM3, figures),
    ...shares,
    flammableAirM3,
    category: categoryOf(substance),
    assumptions: vapourAssumptions(spill),
    warnings: vapourWarnings(spill, { ...shares, flammableAirM3 }),
    sources: [substance.source, t`vapour = liquid · density · molar volume / molar mass`, flammabilitySource],
    deferral: deferrals.vapour,
  });
}

export function categoryOf({ flashC, boilingC }: Substance): GhsCategory | undefined {
  return flashC === undefined ? undefined : ghsCategory(flashC, boilingC ?? Number.POSITIVE_INFINITY);
}

function isSize(amount: number): boolean {
  return amount > 0 && Number.isFinite(amount);
}
