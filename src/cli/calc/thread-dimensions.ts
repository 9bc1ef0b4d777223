/** A thread by its name: what it measures. */
import type { Designation } from "../../engine/workshop/designation.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { deferrals } from "../../engine/workshop/grounds.ts";
import { dimensionsOf, type ThreadDimensions } from "../../engine/workshop/threads/dimensions.ts";
import { seriesNamed } from "../../engine/workshop/threads/series.ts";
import { twinsOf, twinWords } from "../../engine/workshop/threads/twins.ts";
import type { Call, Output } from "../command.ts";
import { printAnswer, tidy } from "./print.ts";

export function printDimensions(call: Call, output: Output, size: Designation): void {
  const { angle, standard } = seriesNamed(size.series);
  const found = dimensionsOf(size);
  printAnswer(
    call,
    output,
    linesOf(size, found, angle),
    {
      ...{ designation: size.designation, series: size.series, standard, angle, leftHand: size.leftHand },
      ...{ diameterMm: size.diameterMm, pitchMm: tidy(size.pitchMm), tpi: size.tpi ?? null },
      pitchDiameterMm: tidy(found.pitchDiameterMm),
      minorDiameterMm: tidy(found.minorDiameterMm),
      rootDiameterMm: found.rootDiameterMm === undefined ? null : tidy(found.rootDiameterMm),
      stressAreaMm2: tidy(found.stressAreaMm2),
      tapDrillMm: found.tapDrill.diameterMm,
      clearanceHoleMm: found.clearanceHole ?? null,
    },
    {
      assumptions: [
        "Basic sizes, without tolerance: a real screw is a little smaller.",
        `Tapping drill by ${found.tapDrill.rule}.`,
      ],
      warnings: twinsOf(size).map(twinWords),
      sources: [found.source, ...(found.clearanceHole ? ["ISO 273 (clearance holes)"] : [])],
      deferral: deferrals.thread,
    },
  );
}

function linesOf(size: Designation, found: ThreadDimensions, angle: number): string[] {
  const { clearanceHole: hole } = found;
  const mm = (value: number): string => `${formatNumber(value)} mm`;
  const tpi = size.tpi === undefined ? "" : ` (${size.tpi} threads per inch)`;
  return [
    `${size.designation}${size.leftHand ? ", left-hand" : ""}: ${size.series}, flanks ${angle}°`,
    `  outside diameter  ${mm(size.diameterMm)}`,
    `  pitch             ${mm(size.pitchMm)}${tpi}`,
    `  pitch diameter    ${mm(found.pitchDiameterMm)}`,
    `  minor diameter    ${mm(found.minorDiameterMm)}`,
    ...(found.rootDiameterMm === undefined ? [] : [`  root of the screw ${mm(found.rootDiameterMm)}`]),
    `  stress area       ${formatNumber(found.stressAreaMm2)} mm²`,
    `  tapping drill     ${mm(found.tapDrill.diameterMm)}`,
    ...(hole
      ? [`  clearance hole    ${hole.fine} fine, ${hole.medium} medium, ${hole.coarse} coarse, mm`]
      : []),
  ];
}
