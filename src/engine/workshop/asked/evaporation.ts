/** What is filled in of a pan that dries, and of the limit below which its vapour is kept. */

import { t } from "../../words.ts";
import { type AirNeeded, airNeeded, mixingRange } from "../air/air-needed.ts";
import type { ExposureLimit, Substance } from "../air/substance.ts";
import type { Fields } from "./fields.ts";
import { celsiusIn, limitIn, substanceIn } from "./substance.ts";

export interface Aired {
  readonly substance: Substance;
  readonly limit: ExposureLimit;
  readonly mixing: number;
  readonly found: AirNeeded;
}

/** Where no mixing is given, the worst is taken. */
export function airedIn(fields: Fields): Aired | undefined {
  const substance = substanceIn(fields);
  fields.needed("rate", t`so much in a time, such as 50 mL/h`);
  const [litresPerHour, limit] = [fields.measure("rate"), substance && limitFor(fields, substance)];
  const [mixing, celsius] = [fields.measure("mixing") ?? mixingRange.greatest, celsiusIn(fields)];
  if (substance === undefined || litresPerHour === undefined || limit === undefined) return undefined;
  if (fields.troubles.length > 0) return undefined;
  const found = fields.reckoned(airNeeded({ substance, litresPerHour, limit, mixing, celsius }));
  return found && { substance, limit, mixing, found };
}

function limitFor(fields: Fields, { exposure, lowerLimit, name }: Substance): ExposureLimit | undefined {
  if (fields.text("limit") !== undefined) return limitIn(fields, "limit", t`as given`, lowerLimit);
  return (
    exposure ??
    fields.note(
      "limit",
      t`no exposure limit of ${name} that is known here`,
      t`10 % LFL or one of its data sheet`,
    )
  );
}
