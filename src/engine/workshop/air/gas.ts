/** How much vapour a liquid makes, at one atmosphere. */

import { t } from "../../words.ts";
import type { ExposureLimit, Substance } from "./substance.ts";

/** L·atm/(mol·K), CODATA 2018. */
const gasConstant = 0.082057366;
const zeroCelsius = 273.15;
/** L/mol at which limits in mg/m³ and ppm are the same: 25 °C, one atmosphere. */
const limitVolume = 24.45;

/** What a workshop may be at, °C; also keeps the molar volume sound. */
const temperatures = { least: -30, greatest: 60 };

export const temperatureWords = t`from ${temperatures.least} to ${temperatures.greatest} °C`;

export function isWorkshopWarm(celsius: number): boolean {
  return celsius >= temperatures.least && celsius <= temperatures.greatest;
}

/** Litres that a mole of vapour takes: 24.06 at 20 °C, 24.47 at 25 °C. */
export function molarVolume(celsius: number): number {
  return gasConstant * (celsius + zeroCelsius);
}

/** Litres of vapour from a litre of liquid: 1000·SG·Vm/MW. */
export function vapourPerLitre(
  { gravity, molarMass }: Pick<Substance, "gravity" | "molarMass">,
  celsius: number,
): number {
  return (1000 * gravity * molarVolume(celsius)) / molarMass;
}

/** A limit in parts of the air (not per million): mg/m³ by way of the molar volume at 25 °C, as limits are defined. */
export function limitAsPart(
  { amount, unit }: Pick<ExposureLimit, "amount" | "unit">,
  molarMass: number,
): number {
  return (unit === "ppm" ? amount : amount / mgPerM3PerPpm(molarMass)) / 1e6;
}

/** mg/m³ for each ppm: MW/24.45 (NIOSH Pocket Guide). */
export function mgPerM3PerPpm(molarMass: number): number {
  return molarMass / limitVolume;
}

/** Milligrams in a litre of liquid. */
export function mgPerLitre({ gravity }: Pick<Substance, "gravity">): number {
  return gravity * 1e6;
}
