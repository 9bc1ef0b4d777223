import { airNeeded, mixingRange } from "../../engine/workshop/air/air-needed.ts";
import { parseLimit } from "../../engine/workshop/air/exposure-written.ts";
import type { ExposureLimit, Substance } from "../../engine/workshop/air/substance.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { type Call, jsonOption, WrongCall } from "../command.ts";
import { measure, needed, reckoned, taken } from "./ask.ts";
import { numberIn } from "./bolt-options.ts";
import { amount, printAnswer } from "./print.ts";
import { celsiusIn, substanceIn, substanceOptions } from "./substance-options.ts";
import type { Sum } from "./sum.ts";

export const air: Sum = {
  name: "air",
  summary: "tells how much fresh air keeps a vapour below a limit",
  usage: '--substance isopropanol --rate "50 mL/h" [--limit "200 ppm"] [--mixing 5]',
  options: {
    ...substanceOptions,
    rate: { type: "string", value: "FLOW", help: 'liquid that evaporates: "50 mL/h"' },
    limit: {
      type: "string",
      value: "LIMIT",
      help: "200 ppm, 350 mg/m³ or 10 % LFL (default: the exposure limit)",
    },
    mixing: { type: "string", value: "K", help: "1 mixes perfectly, 10 hardly (default: 10)" },
    json: jsonOption,
  },
  words: 0,
  run(call, _words, output) {
    const substance = substanceIn(call);
    const rate = measure(call, "rate", { dimension: "flow", least: "0.001 mL/h", greatest: "1000 L/h" });
    const litresPerHour = needed(rate, "rate", '"50 mL/h"') * 3.6e6;
    const limit = limitIn(call, substance);
    const mixing = numberIn(call, "mixing") ?? mixingRange.greatest;
    const found = reckoned(airNeeded({ substance, litresPerHour, limit, mixing, celsius: celsiusIn(call) }));
    const perHour = found.airM3PerHour;
    printAnswer(
      call,
      output,
      [
        `${substance.name}: about ${formatNumber(roundedUp(perHour, 3), 3)} m³/h of fresh air, to stay below ${limit.amount} ${limit.unit} (${limit.name})`,
        `  the limit is ${formatNumber(roundedUp(found.limitShareOfLowerLimit * 100, 3), 3)} % of the lower flammable limit`,
      ],
      {
        ...{ substance: substance.name, air: amount(perHour, "m³/h") },
        limit: { value: limit.amount, unit: limit.unit, name: limit.name },
        ...{ limitShareOfLowerLimit: found.limitShareOfLowerLimit, mixing },
      },
      found,
    );
  },
};

function limitIn(call: Call, { exposure, lowerLimit, name }: Substance): ExposureLimit {
  const text = call.text("limit");
  if (text !== undefined) return taken(parseLimit(text, "as given", lowerLimit), "--limit", text);
  if (exposure) return exposure;
  throw new WrongCall(
    `No exposure limit of ${name} is known here; give --limit "10 % LFL" or one of its data sheet.`,
  );
}
