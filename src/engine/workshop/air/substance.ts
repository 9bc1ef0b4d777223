import { t } from "../../words.ts";

/** What a solvent is, as far as sums of its vapour need it. */

/** A limit on what one may breathe. */
export interface ExposureLimit {
  readonly amount: number;
  readonly unit: "ppm" | "mg/m³";
  /** Whose limit it is: "NIOSH REL". */
  readonly name: string;
}

export interface Substance {
  readonly name: string;
  /** g/mol. Of a mixture the lowest, which gives the most vapour. */
  readonly molarMass: number;
  /** Weight against water. Of a range the highest. */
  readonly gravity: number;
  /** Lower flammable limit as a part of the air: 0.02 is 2 %. */
  readonly lowerLimit: number;
  /** The strictest known. */
  readonly exposure: ExposureLimit | undefined;
  /** Flash point, °C: the lowest known. */
  readonly flashC: number | undefined;
  readonly boilingC: number | undefined;
  readonly source: string;
}

/** Figures that a programme or a call gives of its own; they go before those of the table. */
export type OwnFigures = Partial<Omit<Substance, "name" | "source">> & {
  /** Where they come from: the safety data sheet, its date and section. */
  readonly source: string;
};

/** What must be known before anything can be reckoned. */
const needed = ["molarMass", "gravity", "lowerLimit"] as const;

/** A substance with own figures in place of the table's; or what is still missing where there is no row to fill up from. */
export function withOwnFigures(
  name: string,
  known: Substance | undefined,
  own: OwnFigures,
): Substance | { readonly missing: readonly (typeof needed)[number][] } {
  const missing = needed.filter((one) => (own[one] ?? known?.[one]) === undefined);
  const { molarMass = known?.molarMass, gravity = known?.gravity, lowerLimit = known?.lowerLimit } = own;
  if (molarMass === undefined || gravity === undefined || lowerLimit === undefined) return { missing };
  return {
    ...{ name: known?.name ?? name, molarMass, gravity, lowerLimit },
    exposure: own.exposure ?? known?.exposure,
    flashC: own.flashC ?? known?.flashC,
    boilingC: own.boilingC ?? known?.boilingC,
    source: known === undefined ? own.source : t`${own.source}; the rest: ${known.source}`,
  };
}
