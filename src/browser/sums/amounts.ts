/** A figure in the unit that stands first, with the other beside it. */
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { findUnit } from "../../engine/workshop/unit-names.ts";
import type { Figure } from "./answer.ts";

export type UnitSystem = "metric" | "inch";

export const isUnitSystem = (value: unknown): value is UnitSystem => value === "metric" || value === "inch";

/** The unit of a kind of figure in each system, by its name in the engine. */
export interface UnitPair {
  readonly metric: string;
  readonly inch: string;
}

export const length: UnitPair = { metric: "mm", inch: "in" };
export const area: UnitPair = { metric: "mm²", inch: "in²" };
export const force: UnitPair = { metric: "kN", inch: "lbf" };
export const vapourVolume: UnitPair = { metric: "L", inch: "ft³" };
export const airVolume: UnitPair = { metric: "m³", inch: "ft³" };
export const airFlow: UnitPair = { metric: "m³/h", inch: "cfm" };

/** Below this, N·m, wrenches are marked in lbf·in and no longer in lbf·ft: common practice. */
const smallTorque = 20;

export const torqueUnits = (newtonMetres: number): UnitPair => ({
  metric: "N·m",
  inch: newtonMetres < smallTorque ? "lbf·in" : "lbf·ft",
});

/** Rounds to so many significant figures, to the safe side or to the nearest. */
export type Rounding = (value: number, figures: number) => number;

const nearest: Rounding = (value) => value;

/** A figure in both units; `base` is in the base unit of its dimension. */
export function inBoth(
  name: string,
  base: number,
  pair: UnitPair,
  units: UnitSystem,
  figures = 4,
  round = nearest,
): Figure {
  const [value, also] = [pair[units], pair[units === "metric" ? "inch" : "metric"]].map(
    (unit) => `${formatNumber(round(amountIn(base, unit), figures), figures)} ${unit}`,
  );
  return { name, value: value!, also };
}

/** Without the noise of binary fractions, which would count in rounding to the safe side. */
function amountIn(base: number, unit: string): number {
  const { factor, offset } = findUnit(unit)!;
  return Number((base / factor - offset).toPrecision(12));
}

/** "6 mm (0.2362 in)", for cells and sentences. */
export const bothWords = ({ value, also }: Figure): string =>
  also === undefined ? value : `${value} (${also})`;
