/** Limits of size of threads. */

import { dimensionsOf } from "../../../src/engine/workshop/threads/dimensions.ts";
import { type Limits, limitsOf } from "../../../src/engine/workshop/threads/limits.ts";
import { sizesOf } from "../../../src/engine/workshop/threads/series.ts";
import { sizeOf } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { atMost, type Check, cell, near, nearPart, table } from "../ledger.ts";

/** Preferred numbers of the series R40 are 6 % apart. */
const preferred = "the standard rounds tolerances to preferred numbers, 4 % at most";

export const metricScrews = table(
  "thread_limits_6g.csv",
  "ASME B1.13M-1995, class 6g, the limits of ISO 965-2; formulas of ISO 965-1:1998, 13.1, 13.3, 13.4",
  (row) => row.get("size")!,
  (row) => {
    const size = sizeOf(row.get("size")!);
    const limits = limitsOf(size);
    const of = (name: string) => cell(row, name);
    const { pitchDiameterMm } = dimensionsOf(size);
    return [
      nearPart(
        "d − d_min",
        size.diameterMm - limits.screwLeastMm,
        size.diameterMm - of("d_min"),
        0.04,
        preferred,
        "published",
      ),
      nearPart(
        "d2 − d2_min",
        pitchDiameterMm - limits.screwLeastPitchMm,
        pitchDiameterMm - of("d2_min"),
        0.05,
        `${preferred}, and d to the middle of its step`,
        "published",
      ),
    ];
  },
);

const ofLimits = {
  "screw major": (limits: Limits) => limits.screwLeastMm,
  "screw effective": (limits: Limits) => limits.screwLeastPitchMm,
  "nut effective": (limits: Limits) => limits.nutGreatestPitchMm,
  "nut minor": (limits: Limits) => limits.nutGreatestMinorMm,
} as const;

/** Of every size that the row is for: how far its limit is from the basic size. The close class is held in the normal one. */
function ofBa(row: Row): Check[] {
  const what = `${row.get("member")} ${row.get("diameter")}` as keyof typeof ofLimits;
  return sizesOf(["BA"])
    .filter(({ size }) => Number(size) >= cell(row, "from_ba") && Number(size) <= cell(row, "to_ba"))
    .map((size) => {
      const { pitchDiameterMm, minorDiameterMm } = dimensionsOf(size);
      const basic = { major: size.diameterMm, effective: pitchDiameterMm, minor: minorDiameterMm };
      const found = Math.abs(
        basic[row.get("diameter") as keyof typeof basic] - ofLimits[what](limitsOf(size)),
      );
      const printed = cell(row, "per_pitch") * size.pitchMm + cell(row, "constant") + cell(row, "allowance");
      const name = `${size.designation}, ${what}`;
      return row.get("class") === "close"
        ? atMost(name, printed, found, "a close screw is inside the normal class", "published")
        : near(name, found, printed, 1e-9, "binary fractions", "published");
    });
}

export const baTolerances = table(
  "ba_tolerances.csv",
  "BS 93, Annex B; Machinery's Handbook, 31st edition, p. 2115",
  (row) =>
    `${row.get("member")} ${row.get("class")} ${row.get("diameter")}, ${row.get("from_ba")} to ${row.get("to_ba")} BA`,
  ofBa,
);
