/** How much air keeps a vapour below a limit. */

import { t } from "../../words.ts";
import { deferrals, type Grounds, roundedUp } from "../grounds.ts";
import { bad, good, type Result } from "../result.ts";
import { isWorkshopWarm, limitAsPart, mgPerLitre, temperatureWords, vapourPerLitre } from "./gas.ts";
import type { ExposureLimit, Substance } from "./substance.ts";
import { alarms, figuresUsed } from "./vapour-words.ts";

export interface Evaporation {
  readonly substance: Substance;
  /** Litres of liquid an hour. */
  readonly litresPerHour: number;
  readonly limit: ExposureLimit;
  /** K: 1 where the air mixes perfectly, 10 where it hardly does. */
  readonly mixing: number;
  readonly celsius: number;
}

export interface AirNeeded extends Grounds {
  /** Rounded up to four figures. */
  readonly airM3PerHour: number;
  /** What the limit is of the lower flammable limit. */
  readonly limitShareOfLowerLimit: number;
}

export type AirCode = "rate" | "limit" | "mixing" | "temperature";

/** Range of the mixing factor: ACGIH, Industrial Ventilation, from memory. */
export const mixingRange = { least: 1, greatest: 10 };

/** Dilution air Q = K·(vapour an hour)/limit = Vm·SG·ER·K·10⁶/(MW·C) m³/h, C in ppm (ACGIH, Industrial Ventilation, chapter 2). */
export function airNeeded(ask: Evaporation): Result<AirNeeded, AirCode> {
  const { substance, litresPerHour, limit, mixing, celsius } = ask;
  const wrong = problemOf(ask);
  if (wrong) return wrong;
  const part = limitAsPart(limit, substance.molarMass);
  const share = part / substance.lowerLimit;
  if (share >= 1)
    return bad("limit", `${limit.amount} ${limit.unit}`, t`a limit below the lower flammable limit`);
  return good({
    airM3PerHour: roundedUp(litresPerHour * mixing * airPerLitre(substance, limit, celsius), 4),
    limitShareOfLowerLimit: roundedUp(share, 4),
    assumptions: [
      figuresUsed(substance),
      t`Kept below ${limit.amount} ${limit.unit} (${limit.name}) on average, at an even rate, with fresh air that replaces what goes.`,
      t`Mixing factor ${mixing}: 1 is perfect mixing, 10 hardly any. At ${celsius} °C and one atmosphere. Rounded up.`,
    ],
    warnings: warningsOf(ask, share),
    sources: [substance.source, t`ACGIH, Industrial Ventilation, chapter 2: Q = K · vapour / limit`],
    deferral: deferrals.vapour,
  });
}

/** Air in m³ that takes up the vapour of a litre, down to the limit: a limit in mg/m³ by weight, one in ppm by volume. */
function airPerLitre(substance: Substance, limit: ExposureLimit, celsius: number): number {
  if (limit.unit === "mg/m³") return mgPerLitre(substance) / limit.amount;
  return (vapourPerLitre(substance, celsius) * 1000) / limit.amount;
}

function problemOf({
  litresPerHour,
  limit,
  mixing,
  celsius,
}: Evaporation): Result<never, AirCode> | undefined {
  if (!(litresPerHour > 0 && Number.isFinite(litresPerHour)))
    return bad("rate", `${litresPerHour} L/h`, t`a rate above 0`);
  if (!(limit.amount > 0 && Number.isFinite(limit.amount)))
    return bad("limit", `${limit.amount} ${limit.unit}`, t`a limit above 0`);
  if (!(mixing >= mixingRange.least && mixing <= mixingRange.greatest)) {
    return bad(
      "mixing",
      String(mixing),
      t`a mixing factor from ${mixingRange.least} (perfect) to ${mixingRange.greatest} (poor)`,
    );
  }
  if (!isWorkshopWarm(celsius)) return bad("temperature", `${celsius} °C`, temperatureWords);
  return undefined;
}

function warningsOf({ substance, limit }: Evaporation, share: number): string[] {
  const warnings: string[] = [];
  if (share > alarms.stop)
    warnings.push(t`The limit is above a quarter of the lower flammable limit: too near to fire.`);
  else if (share > alarms.danger) warnings.push(t`The limit is above a tenth of the lower flammable limit.`);
  const { exposure, molarMass } = substance;
  if (exposure && limitAsPart(limit, molarMass) > limitAsPart(exposure, molarMass) * 1.0001) {
    warnings.push(
      t`The limit is above what one may breathe: ${exposure.name}, ${exposure.amount} ${exposure.unit}.`,
    );
  }
  return warnings;
}
