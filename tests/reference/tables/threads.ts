/** Sizes and basic dimensions of threads. */

import { dimensionsOf, type ThreadDimensions } from "../../../src/engine/workshop/threads/dimensions.ts";
import { sizesOf } from "../../../src/engine/workshop/threads/series.ts";
import type { ThreadSize } from "../../../src/engine/workshop/threads/size.ts";
import { sizeOf } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { asPrinted, type Check, cell, near, nearPart, same, table } from "../ledger.ts";

function found(name: string): ThreadSize & ThreadDimensions {
  const size = sizeOf(name);
  return { ...size, ...dimensionsOf(size) };
}

const mm2PerInch2 = 25.4 ** 2;

export const isoMetric = table(
  "threads_iso_metric.csv",
  "ISO 261 (sizes), ISO 724 (d2, D1), ISO 898-1:2013, 9.1.6.1 (d3, As), ISO 2306 (tapping drill)",
  (row) => row.get("designation")!,
  (row) => {
    const thread = found(row.get("designation")!);
    return [
      same("d", thread.diameterMm, cell(row, "d"), "published"),
      same("P", thread.pitchMm, cell(row, "P"), "published"),
      asPrinted(row, "d2", thread.pitchDiameterMm, "formula"),
      asPrinted(row, "d1_D1", thread.minorDiameterMm, "formula"),
      asPrinted(row, "d3", thread.rootDiameterMm!, "formula"),
      asPrinted(row, "As_exact", thread.stressAreaMm2, "formula"),
      same("tap_drill", thread.tapDrill.diameterMm, cell(row, "tap_drill"), "memory"),
    ];
  },
);

export const unified = table(
  "threads_unified.csv",
  "ASME B1.1 (sizes, d2, D1), FED-STD-H28/2B, Appendix B (As)",
  (row) => `${row.get("size")}-${row.get("tpi")} ${row.get("series")}`,
  (row) => {
    const thread = found(`${row.get("size")}-${row.get("tpi")} ${row.get("series")}`);
    const area = thread.stressAreaMm2 / mm2PerInch2;
    const inHandbooks = cell(row, "As_in2_published_memory");
    return [
      same("tpi", thread.tpi!, cell(row, "tpi"), "published"),
      asPrinted(row, "major_in", thread.diameterMm / 25.4, "published"),
      asPrinted(row, "d2_in", thread.pitchDiameterMm / 25.4, "formula"),
      asPrinted(row, "D1_in", thread.minorDiameterMm / 25.4, "formula"),
      asPrinted(row, "As_in2_computed", area, "formula"),
      nearPart("As of handbooks", area, inHandbooks, 0.005, "printed to three figures", "memory"),
    ];
  },
);

export const britishAssociation = table(
  "threads_ba.csv",
  "BS 93, as handbooks reprint it; pitch 0.9^n and diameter 6p^1.2 rounded",
  (row) => `${row.get("ba")} BA`,
  (row) => {
    const thread = found(`${row.get("ba")} BA`);
    return [
      same("p", thread.pitchMm, cell(row, "p"), "published"),
      same("D", thread.diameterMm, cell(row, "D"), "published"),
      near("eff", thread.pitchDiameterMm, cell(row, "eff"), 1e-9, "binary fractions", "published"),
      near("minor", thread.minorDiameterMm, cell(row, "minor"), 1e-9, "binary fractions", "published"),
      asPrinted(row, "Atensile_eff_minor_mean_mm2", thread.stressAreaMm2, "formula"),
      near(
        "p by 0.9^n",
        thread.pitchMm,
        cell(row, "p_formula"),
        0.0051,
        "the standard rounds to 0.01",
        "formula",
      ),
      near(
        "D by 6p^1.2",
        thread.diameterMm,
        cell(row, "D_formula"),
        0.051,
        "the standard rounds to 0.1",
        "formula",
      ),
    ];
  },
);

export const whitworth = table(
  "threads_whitworth.csv",
  "BS 84 (sizes; diameters by its depth 0.640327P); stress area by usual convention, in no standard",
  (row) => `${row.get("size")} in ${row.get("series")}`,
  (row) => {
    const thread = found(`${row.get("size")} in ${row.get("series")}`);
    return [
      same("tpi", thread.tpi!, cell(row, "tpi"), "published"),
      asPrinted(row, "major_in", thread.diameterMm / 25.4, "published"),
      asPrinted(row, "effective_in", thread.pitchDiameterMm / 25.4, "formula"),
      asPrinted(row, "minor_in", thread.minorDiameterMm / 25.4, "formula"),
      asPrinted(row, "As_in2", thread.stressAreaMm2 / mm2PerInch2, "formula"),
    ];
  },
);

/** Of every size of that diameter, coarse and fine. */
function holes(row: Row): Check[] {
  const standing = row.get("origin") === "memory" ? "memory" : "published";
  return sizesOf(["ISO metric"])
    .filter(({ size }) => size === row.get("size"))
    .flatMap((size) => {
      const hole = dimensionsOf(size).clearanceHole;
      return (["fine", "medium", "coarse"] as const).map((fit) =>
        same(`${size.designation}, ${fit}`, hole?.[fit] ?? "none", cell(row, fit), standing),
      );
    });
}

export const clearanceHoles = table("iso273_clearance.csv", "ISO 273:1979", (row) => row.get("size")!, holes);
