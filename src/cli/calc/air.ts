import { airedIn } from "../../engine/workshop/asked/evaporation.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { jsonOption } from "../command.ts";
import { asked } from "./ask.ts";
import { amount, printAnswer } from "./print.ts";
import { substanceOptions } from "./substance-options.ts";
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
    const { substance, limit, mixing, found } = asked(call, air.options, airedIn);
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
