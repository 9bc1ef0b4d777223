/** A thread by its name: what it measures. */

import { t } from "../../engine/words.ts";
import { threadIn } from "../../engine/workshop/asked/thread.ts";
import type { Designation } from "../../engine/workshop/designation.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { dimensionsOf, type ThreadDimensions } from "../../engine/workshop/threads/dimensions.ts";
import { seriesNamed } from "../../engine/workshop/threads/series.ts";
import { mmPerInch, seriesWords } from "../../engine/workshop/threads/size.ts";
import { twinsOf, twinWords } from "../../engine/workshop/threads/twins.ts";
import { area, inBoth, length, type UnitSystem } from "./amounts.ts";
import type { Answer, Figure, Sum } from "./answer.ts";

export const thread: Sum = {
  id: "thread",
  reckon(fields, units) {
    const size = threadIn(fields);
    return size === undefined ? undefined : answer(size, units);
  },
};

function answer(size: Designation, units: UnitSystem): Answer {
  const { angle } = seriesNamed(size.series);
  const found = dimensionsOf(size);
  const hand = size.leftHand ? t`, left-hand` : "";
  return {
    headline: t`${size.designation}${hand}: ${seriesWords(size.series)}, flanks ${angle}°`,
    figures: figuresOf(size, found, units),
    grounds: {
      assumptions: [
        t`Basic sizes, without tolerance: a real screw is a little smaller.`,
        t`Tapping drill by ${found.tapDrill.rule}.`,
      ],
      warnings: twinsOf(size).map(twinWords),
      sources: [found.source, ...(found.clearanceHole ? [t`ISO 273 (clearance holes)`] : [])],
    },
  };
}

function figuresOf(size: Designation, found: ThreadDimensions, units: UnitSystem): Figure[] {
  const mm = (name: string, value: number): Figure => inBoth(name, value / 1000, length, units);
  const { clearanceHole: hole, rootDiameterMm: root } = found;
  return [
    mm(t`Outside diameter`, size.diameterMm),
    mm(t`Pitch`, size.pitchMm),
    { name: t`Threads per inch`, value: formatNumber(size.tpi ?? mmPerInch / size.pitchMm) },
    mm(t`Pitch diameter`, found.pitchDiameterMm),
    mm(t`Minor diameter`, found.minorDiameterMm),
    ...(root === undefined ? [] : [mm(t`Root of the screw`, root)]),
    inBoth(t`Stress area`, found.stressAreaMm2 / 1e6, area, units),
    mm(t`Tapping drill`, found.tapDrill.diameterMm),
    ...(hole
      ? [
          mm(t`Clearance hole, fine`, hole.fine),
          mm(t`Clearance hole, medium`, hole.medium),
          mm(t`Clearance hole, coarse`, hole.coarse),
        ]
      : []),
  ];
}
