/** Preload and tightening torque, and the way back. */
import { type Joint, pullOf, type Tightening, tighten } from "../../engine/workshop/bolts/tighten.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { area, bothWords, force, inBoth, torqueUnits, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";
import { bearingIn, lubricationIn, strengthIn } from "./bolt-fields.ts";
import type { Fields } from "./fields.ts";
import { threadIn } from "./thread.ts";

export const torque: Sum = {
  id: "torque",
  reckon(fields, units) {
    const joint = jointIn(fields);
    const applied = fields.measure("torque", {
      dimension: "torque",
      least: "0.0001 N·m",
      greatest: "10 kN·m",
    });
    const share = fields.number("share");
    if (applied !== undefined && share !== undefined)
      fields.note("share", "Found both a torque and a share of the yield point; expected one of them.");
    if (joint === undefined || fields.troubles.length > 0) return undefined;
    const found = fields.reckoned(applied === undefined ? tighten(joint, share) : pullOf(joint, applied));
    return found && answer(joint, found, applied !== undefined, units);
  },
};

function jointIn(fields: Fields): Joint | undefined {
  const size = threadIn(fields);
  const [strength, lubrication] = [strengthIn(fields, size), lubricationIn(fields)];
  const bearing = size && bearingIn(fields, size);
  if (size === undefined || strength === undefined || lubrication === undefined || bearing === undefined)
    return undefined;
  return { size, strength, lubrication, bearing, used: fields.isTicked("used") };
}

function answer({ size, strength }: Joint, found: Tightening, isWayBack: boolean, units: UnitSystem): Answer {
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
