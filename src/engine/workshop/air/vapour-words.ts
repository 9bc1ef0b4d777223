/** What is assumed of a spill, and what is dangerous about it, in words. */

import { t } from "../../words.ts";
import { formatNumber } from "../format-quantity.ts";
import { roundedUp } from "../grounds.ts";
import type { Substance } from "./substance.ts";
import type { Spill } from "./vapour.ts";

/** Usual alarms, as parts of the lower limit: 10 % is where NIOSH puts immediate danger, 25 % where work stops. */
export const alarms = { danger: 0.1, stop: 0.25 };

/** The figures of a substance, as they were used. */
export function figuresUsed({ name, molarMass, gravity, lowerLimit, exposure }: Substance): string {
  const breathed =
    exposure === undefined
      ? t`no exposure limit known`
      : `${exposure.name} ${exposure.amount} ${exposure.unit}`;
  return t`${name}: ${molarMass} g/mol, specific gravity ${gravity}, lower flammable limit ${formatNumber(lowerLimit * 100)} %, ${breathed}.`;
}

export function vapourAssumptions({ substance, celsius }: Spill): string[] {
  return [
    figuresUsed(substance),
    t`All of the liquid evaporates, none of the vapour leaves the room, and it is spread evenly: near the liquid there is far more.`,
    t`The room is at ${formatNumber(celsius)} °C and one atmosphere. Figures are rounded up.`,
  ];
}

interface Shares {
  readonly shareOfLowerLimit: number;
  readonly shareOfExposureLimit: number | undefined;
  readonly flammableAirM3: number;
}

export function vapourWarnings({ substance, celsius }: Spill, shares: Shares): string[] {
  const warnings = [limitWarning(shares.shareOfLowerLimit)];
  const { flashC } = substance;
  if (flashC === undefined || flashC <= celsius + flashMargin) {
    warnings.push(
      t`At this temperature the liquid can give off enough vapour to burn: no flame, spark or hot surface near it.`,
    );
  }
  warnings.push(
    t`Vapour is heavier than air and lies low: kept together it makes ${formatNumber(roundedUp(shares.flammableAirM3, 3), 3)} m³ of air flammable, whatever the room's average.`,
  );
  const { shareOfExposureLimit: breathed } = shares;
  if (breathed === undefined)
    warnings.push(t`No exposure limit is known here: look for one in the safety data sheet.`);
  else if (breathed > 1) warnings.push(t`More than one may breathe: not in this room.`);
  return warnings.filter((warning) => warning !== undefined);
}

/** A flash point this near above the room is too near: it is measured under other conditions, and a lamp warms a pan. */
const flashMargin = 15;

function limitWarning(share: number): string | undefined {
  if (share >= 1) return t`Above the lower flammable limit: the whole room can explode.`;
  if (share >= alarms.stop)
    return t`Above a quarter of the lower flammable limit: leave, switch nothing on or off, let the air clear.`;
  if (share >= alarms.danger)
    return t`Above a tenth of the lower flammable limit: immediate danger by the NIOSH rule.`;
  return undefined;
}
