import type { GhsCategory } from "../../engine/workshop/air/flammability.ts";
import type { Substance } from "../../engine/workshop/air/substance.ts";
import type { Vapour } from "../../engine/workshop/air/vapour.ts";
import { spiltIn } from "../../engine/workshop/asked/spill.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { jsonOption } from "../command.ts";
import { asked } from "./ask.ts";
import { amount, printAnswer } from "./print.ts";
import { substanceOptions } from "./substance-options.ts";
import type { Sum } from "./sum.ts";

export const vapour: Sum = {
  name: "vapour",
  summary: "tells what the vapour of a spill or a pan does to the air of a room",
  usage: '--substance white-spirit --amount "100 mL" --room "4 m x 3 m x 2.4 m"',
  options: {
    ...substanceOptions,
    amount: { type: "string", value: "AMOUNT", help: "liquid that evaporates: a volume or a mass" },
    room: { type: "string", value: "SIZE", help: "30 m³, or length x width x height" },
    json: jsonOption,
  },
  words: 0,
  run(call, _words, output) {
    const { substance, found } = asked(call, vapour.options, spiltIn);
    printAnswer(call, output, linesOf(substance, found), dataOf(substance, found), found);
  },
};

function linesOf({ name, exposure }: Substance, found: Vapour): string[] {
  const round = (value: number): string => formatNumber(roundedUp(value, 3), 3);
  const { shareOfExposureLimit: breathed, category } = found;
  return [
    `${name}: at most about ${round(found.vapourL)} L of vapour, ${round(found.ppm)} ppm (${round(found.mgPerM3)} mg/m³) over the room`,
    `  ${round(found.shareOfLowerLimit * 100)} % of the lower flammable limit`,
    ...(breathed === undefined
      ? []
      : [
          `  ${round(breathed)} times the exposure limit (${exposure!.name}, ${exposure!.amount} ${exposure!.unit})`,
        ]),
    ...(category ? [categoryWords(category)] : []),
  ];
}

function categoryWords({ category, statement, signal }: GhsCategory): string {
  const notice = category === 4 ? " (no category in the European Union)" : "";
  return `  flammable liquid, category ${category}: ${statement}, ${signal}${notice}`;
}

function dataOf({ name, exposure }: Substance, found: Vapour): Record<string, unknown> {
  return {
    substance: name,
    vapour: amount(found.vapourL, "L"),
    concentration: amount(found.ppm, "ppm"),
    massConcentration: amount(found.mgPerM3, "mg/m³"),
    shareOfLowerLimit: found.shareOfLowerLimit,
    shareOfExposureLimit: found.shareOfExposureLimit ?? null,
    exposureLimit: exposure ? { value: exposure.amount, unit: exposure.unit, name: exposure.name } : null,
    flammableAir: amount(found.flammableAirM3, "m³"),
    category: found.category ?? null,
  };
}
