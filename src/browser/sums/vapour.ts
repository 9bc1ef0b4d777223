/** What the vapour of a spill or a pan does to the air of a room. */
import { labelWordNames } from "../../engine/label-words.ts";
import { t } from "../../engine/words.ts";
import type { Substance } from "../../engine/workshop/air/substance.ts";
import type { Vapour } from "../../engine/workshop/air/vapour.ts";
import { spiltIn } from "../../engine/workshop/asked/spill.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { capital } from "../page/words.ts";
import { airVolume, inBoth, type UnitSystem, vapourVolume } from "./amounts.ts";
import type { Answer, Figure, Sum } from "./answer.ts";

export const vapour: Sum = {
  id: "vapour",
  reckon(fields, units) {
    const spilt = spiltIn(fields);
    return spilt && answer(spilt.substance, spilt.found, units);
  },
};

const round = (value: number): string => formatNumber(roundedUp(value, 3), 3);

function answer({ name, exposure }: Substance, found: Vapour, units: UnitSystem): Answer {
  const { category, shareOfExposureLimit: breathed } = found;
  const figures: readonly (Figure | undefined)[] = [
    {
      name: t`On average over the room, at most about`,
      value: t`${round(found.ppm)} ppm`,
      also: t`${round(found.mgPerM3)} mg/m³`,
    },
    { name: t`Of the lower flammable limit`, value: `${round(found.shareOfLowerLimit * 100)} %` },
    exposure && {
      name: t`Times the exposure limit (${exposure.name}, ${exposure.amount} ${exposure.unit})`,
      value: round(breathed!),
    },
    inBoth(t`Vapour`, found.vapourL / 1000, vapourVolume, units, 3, roundedUp),
    inBoth(
      t`Air that it makes flammable if it stays together`,
      found.flammableAirM3,
      airVolume,
      units,
      3,
      roundedUp,
    ),
    category && {
      name: t`Flammable liquid, category ${category.category}`,
      value: t`${category.statement}; label says ${capital(labelWordNames[category.signal === "Danger" ? "danger" : "warning"])}`,
    },
  ];
  return {
    headline: headlineOf(name, found.shareOfLowerLimit, breathed),
    figures: figures.filter((figure) => figure !== undefined),
    grounds: found,
  };
}

/** Never a clearance: below every limit on average says nothing of the air at a hand. */
function headlineOf(name: string, ofLower: number, breathed: number | undefined): string {
  const limits = [t`${round(ofLower * 100)} % of the lower flammable limit`];
  if (breathed !== undefined) limits.push(t`${round(breathed)} times the exposure limit`);
  return t`${capital(name)}: an estimate of ${limits.join(", ")}, on average over the room`;
}
