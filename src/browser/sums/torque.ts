/** Preload and tightening torque, and the way back. */
import { t } from "../../engine/words.ts";
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
  const torqueFigure = inBoth(t`Torque`, found.torqueNm, torqueUnits(found.torqueNm), units, 3);
  const preload = inBoth(t`Preload`, found.preloadN, force, units, 3);
  const bolt = `${size.designation}, ${strength.name}`;
  return {
    headline: isWayBack
      ? t`${bolt}: ${bothWords(torqueFigure)} pulls with ${bothWords(preload)}`
      : t`${bolt}: torque ${bothWords(torqueFigure)}, preload ${bothWords(preload)}`,
    figures: [
      torqueFigure,
      preload,
      { name: t`Of the yield point, pull and twist together`, value: percent(found.shareOfYield) },
      ...(found.shareOfProof === undefined
        ? []
        : [{ name: t`Of the proof load`, value: percent(found.shareOfProof) }]),
      inBoth(t`Stress area`, found.stressAreaMm2 / 1e6, area, units),
      { name: t`Nut factor`, value: formatNumber(found.nutFactor, 3) },
    ],
    grounds: found,
  };
}

const percent = (part: number): string => `${formatNumber(part * 100, 3)} %`;
