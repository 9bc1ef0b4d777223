/** Preload and tightening torque, and the way back. */
import { type Tightened, tightenedIn } from "../../engine/workshop/asked/tightening.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { area, bothWords, force, inBoth, torqueUnits, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";

export const torque: Sum = {
  id: "torque",
  reckon(fields, units) {
    const tightened = tightenedIn(fields);
    return tightened && answer(tightened, units);
  },
};

function answer({ joint, found, isWayBack }: Tightened, units: UnitSystem): Answer {
  const { size, strength } = joint;
  const torqueFigure = inBoth("Torque", found.torqueNm, torqueUnits(found.torqueNm), units, 3);
  const preload = inBoth("Preload", found.preloadN, force, units, 3);
  const bolt = `${size.designation}, ${strength.name}`;
  return {
    headline: isWayBack
      ? `${bolt}: ${bothWords(torqueFigure)} pulls with ${bothWords(preload)}`
      : `${bolt}: torque ${bothWords(torqueFigure)}, preload ${bothWords(preload)}`,
    figures: [
      torqueFigure,
      preload,
      { name: "Of the yield point, pull and twist together", value: percent(found.shareOfYield) },
      ...(found.shareOfProof === undefined
        ? []
        : [{ name: "Of the proof load", value: percent(found.shareOfProof) }]),
      inBoth("Stress area", found.stressAreaMm2 / 1e6, area, units),
      { name: "Nut factor", value: formatNumber(found.nutFactor, 3) },
    ],
    grounds: found,
  };
}

const percent = (part: number): string => `${formatNumber(part * 100, 3)} %`;
