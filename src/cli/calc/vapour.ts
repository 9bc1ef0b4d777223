import type { GhsCategory } from "../../engine/workshop/air/flammability.ts";
import { parseRoom } from "../../engine/workshop/air/room-written.ts";
import type { Substance } from "../../engine/workshop/air/substance.ts";
import { type Vapour, vapourOf } from "../../engine/workshop/air/vapour.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { type Call, jsonOption } from "../command.ts";
import { needed, reckoned, taken, within } from "./ask.ts";
import { amount, printAnswer } from "./print.ts";
import { celsiusIn, substanceIn, substanceOptions } from "./substance-options.ts";
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
    const substance = substanceIn(call);
    const litres = litresIn(call, substance);
    const room = needed(call.text("room"), "room", '"30 m³"');
    const roomM3 = taken(parseRoom(room), "--room", room);
    within(room, "--room", taken(parseQuantity(`${roomM3} m³`), "--room", room), roomRange);
    const found = reckoned(vapourOf({ substance, litres, roomM3, celsius: celsiusIn(call) }));
    printAnswer(call, output, linesOf(substance, found), dataOf(substance, found), found);
  },
};

const roomRange = { dimension: "volume", least: "0.001 m³", greatest: "1000000 m³" } as const;

/** A mass becomes a volume by the specific gravity. */
function litresIn(call: Call, { gravity }: Substance): number {
  const text = needed(call.text("amount"), "amount", '"100 mL"');
  const isMass = parseQuantity(text, "mass").ok;
  const read = taken(parseQuantity(text, isMass ? "mass" : "volume"), "--amount", text);
  const litres = isMass ? read.base / gravity : read.base * 1000;
  within(
    text,
    "--amount",
    { ...read, base: litres / 1000 },
    { dimension: "volume", least: "0.01 mL", greatest: "1000 L" },
  );
  return litres;
}

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
