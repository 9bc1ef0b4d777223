/** How much fresh air keeps a vapour below a limit. */
import { type AirNeeded, airNeeded, mixingRange } from "../../engine/workshop/air/air-needed.ts";
import type { ExposureLimit, Substance } from "../../engine/workshop/air/substance.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { capital } from "../page/words.ts";
import { airFlow, bothWords, inBoth, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";
import type { Fields } from "./fields.ts";
import { celsiusIn, limitIn, substanceIn } from "./substance-fields.ts";

export const air: Sum = {
  id: "air",
  reckon(fields, units) {
    const substance = substanceIn(fields);
    const [litresPerHour, limit] = [rateIn(fields), substance && limitFor(fields, substance)];
    const [mixing, celsius] = [fields.number("mixing") ?? mixingRange.greatest, celsiusIn(fields)];
    if (substance === undefined || litresPerHour === undefined || limit === undefined) return undefined;
    if (fields.troubles.length > 0) return undefined;
    const found = fields.reckoned(airNeeded({ substance, litresPerHour, limit, mixing, celsius }));
    return found && answer(substance, limit, found, units);
  },
};

function rateIn(fields: Fields): number | undefined {
  fields.needed("rate", "so much in a time, such as 50 mL/h");
  const rate = fields.measure("rate", { dimension: "flow", least: "0.001 mL/h", greatest: "1000 L/h" });
  return rate === undefined ? undefined : rate * 3.6e6;
}

function limitFor(fields: Fields, { exposure, lowerLimit, name }: Substance): ExposureLimit | undefined {
  if (fields.text("limit") !== undefined) return limitIn(fields, "limit", "as given", lowerLimit);
  return (
    exposure ??
    fields.note(
      "limit",
      `No exposure limit of ${name} is known here; expected 10 % LFL or one of its data sheet.`,
    )
  );
}

function answer(
  { name }: Substance,
  limit: ExposureLimit,
  { airM3PerHour, limitShareOfLowerLimit, ...grounds }: AirNeeded,
  units: UnitSystem,
): Answer {
  const flow = inBoth("Fresh air", airM3PerHour / 3600, airFlow, units, 3, roundedUp);
  const ofLower = formatNumber(roundedUp(limitShareOfLowerLimit * 100, 3), 3);
  return {
    headline: `${capital(name)}: about ${bothWords(flow)} of fresh air, an estimate`,
    figures: [
      flow,
      { name: "To stay on average below", value: `${limit.amount} ${limit.unit}`, also: limit.name },
      { name: "That limit is, of the lower flammable limit", value: `${ofLower} %` },
    ],
    grounds,
  };
}
