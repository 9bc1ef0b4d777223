/** The ring on which a head or nut turns while it is tightened. */

import { t } from "../../words.ts";
import { formatNumber } from "../format-quantity.ts";
import { clearanceHole } from "../threads/clearance.ts";
import type { ThreadSize } from "../threads/size.ts";

export interface Bearing {
  readonly outerMm: number;
  readonly holeMm: number;
  /** In words: what was taken, and from where. */
  readonly said: string;
}

/** ISO 4014 and ISO 4762, least bearing diameter dw of a hexagon head, mm. M4 to M12 checked by VDI 2230, Table A1; the rest from memory. */
const hexagon: ReadonlyMap<string, number> = new Map([
  ["M1.6", 2.3],
  ["M2", 3.1],
  ["M2.5", 4.1],
  ["M3", 4.6],
  ["M4", 5.9],
  ["M5", 6.9],
  ["M6", 8.9],
  ["M8", 11.6],
  ["M10", 14.6],
  ["M12", 16.6],
  ["M14", 19.6],
  ["M16", 22.5],
  ["M18", 25.3],
  ["M20", 28.2],
  ["M22", 31.7],
  ["M24", 33.6],
]);

/** Without a table: a small ring, since a larger one needs more torque for the same pull and never less. */
const perDiameter = { outer: 1.5, hole: 1.1 };

/**
 * The bearing ring of a size. What is given counts; else a hexagon head in a medium hole where tables have them; else 1.5 and
 * 1.1 times the diameter, as for BA, Whitworth and Unified, whose heads differ from maker to maker.
 */
export function bearingOf(size: ThreadSize, outerMm?: number, holeMm?: number): Bearing {
  const head = hexagon.get(size.size);
  const medium = clearanceHole(size)?.medium;
  const outer = outerMm ?? head ?? perDiameter.outer * size.diameterMm;
  const hole = holeMm ?? medium ?? perDiameter.hole * size.diameterMm;
  const outerWords = wordsFor(
    outerMm,
    head,
    t`hexagon head, ISO 4014`,
    t`${perDiameter.outer} times the diameter`,
  );
  const holeWords = wordsFor(holeMm, medium, t`medium, ISO 273`, t`${perDiameter.hole} times the diameter`);
  const said = t`The head bears on a ring of ${formatNumber(outer)} mm (${outerWords}) around a hole of ${formatNumber(hole)} mm (${holeWords}).`;
  return { outerMm: outer, holeMm: hole, said };
}

function wordsFor(
  given: number | undefined,
  tabled: number | undefined,
  table: string,
  rule: string,
): string {
  if (given !== undefined) return t`as given`;
  return tabled !== undefined ? table : t`assumed: ${rule}`;
}

/** Mean diameter of the ring, mm: Dkm of VDI 2230. */
export function bearingMeanMm({ outerMm, holeMm }: Bearing): number {
  return (outerMm + holeMm) / 2;
}
