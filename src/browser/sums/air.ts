/** How much fresh air keeps a vapour below a limit. */
import { t } from "../../engine/words.ts";
import type { AirNeeded } from "../../engine/workshop/air/air-needed.ts";
import type { ExposureLimit, Substance } from "../../engine/workshop/air/substance.ts";
import { airedIn } from "../../engine/workshop/asked/evaporation.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { capital } from "../page/words.ts";
import { airFlow, bothWords, inBoth, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";

export const air: Sum = {
  id: "air",
  reckon(fields, units) {
    const aired = airedIn(fields);
    return aired && answer(aired.substance, aired.limit, aired.found, units);
  },
};

function answer(
  { name }: Substance,
  limit: ExposureLimit,
  { airM3PerHour, limitShareOfLowerLimit, ...grounds }: AirNeeded,
  units: UnitSystem,
): Answer {
  const flow = inBoth(t`Fresh air`, airM3PerHour / 3600, airFlow, units, 3, roundedUp);
  const ofLower = formatNumber(roundedUp(limitShareOfLowerLimit * 100, 3), 3);
  return {
    headline: t`${capital(name)}: about ${bothWords(flow)} of fresh air, an estimate`,
    figures: [
      flow,
      { name: t`To stay on average below`, value: `${limit.amount} ${limit.unit}`, also: limit.name },
      { name: t`That limit is, of the lower flammable limit`, value: `${ofLower} %` },
    ],
    grounds,
  };
}
