import { t } from "../../words.ts";
import { formOf } from "./form.ts";
import type { SeriesName, ThreadSize } from "./size.ts";

export interface TapDrill {
  readonly diameterMm: number;
  readonly rule: string;
}

/** ISO 2306: where the drill of a coarse pitch is not just d − P. From memory, like the rule itself. */
const roundedInIso2306: ReadonlyMap<string, number> = new Map([
  ["M4.5", 3.7],
  ["M8", 6.8],
  ["M9", 7.8],
  ["M12", 10.2],
]);

/** How much of its depth a tapped thread has in practice, and what the full depth is where the profile does not say. */
const share = 0.75;

/** Full depth of an American thread as drills are reckoned: twice its 0.64952P. */
const fullDepth: Partial<Record<SeriesName, number>> = { UNC: 1.29904, UNF: 1.29904 };

/**
 * The drill to tap a size. Metric: ISO 2306 (d − P). Others have no standard drill: 75 % of the full depth, to the nearest
 * 0.1 mm (0.05 mm below 3 mm), as is common practice.
 */
export function tapDrill(size: ThreadSize): TapDrill {
  const { diameterMm: d, pitchMm: p, series, designation } = size;
  if (series === "ISO metric") {
    const diameterMm = roundedInIso2306.get(designation) ?? Number((d - p).toFixed(3));
    return { diameterMm, rule: t`ISO 2306 (from memory): d − P` };
  }
  const perPitch = fullDepth[series];
  const depth = perPitch === undefined ? formOf(size).minor(p) : perPitch * p;
  const exact = d - share * depth;
  const grid = exact < 3 ? 20 : 10;
  return {
    diameterMm: Math.round(exact * grid) / grid,
    rule: t`75 % of the full depth of thread, to the nearest drill: common practice, not of the standard`,
  };
}
