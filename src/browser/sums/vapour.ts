/** What the vapour of a spill or a pan does to the air of a room. */
import { parseRoom } from "../../engine/workshop/air/room-written.ts";
import type { Substance } from "../../engine/workshop/air/substance.ts";
import { type Vapour, vapourOf } from "../../engine/workshop/air/vapour.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { capital } from "../page/words.ts";
import { airVolume, inBoth, type UnitSystem, vapourVolume } from "./amounts.ts";
import type { Answer, Figure, Sum } from "./answer.ts";
import type { Fields, Range } from "./fields.ts";
import { celsiusIn, substanceIn } from "./substance-fields.ts";

export const vapour: Sum = {
  id: "vapour",
  reckon(fields, units) {
    const substance = substanceIn(fields);
    const [litres, roomM3, celsius] = [litresIn(fields, substance), roomIn(fields), celsiusIn(fields)];
    if (substance === undefined || litres === undefined || roomM3 === undefined) return undefined;
    if (fields.troubles.length > 0) return undefined;
    const found = fields.reckoned(vapourOf({ substance, litres, roomM3, celsius }));
    return found && answer(substance, found, units);
  },
};

const amounts: Range = { dimension: "volume", least: "0.01 mL", greatest: "1000 L" };
const rooms: Range = { dimension: "volume", least: "0.001 m³", greatest: "1000000 m³" };

/** A mass becomes a volume by the specific gravity. */
function litresIn(fields: Fields, substance: Substance | undefined): number | undefined {
  const text = fields.needed("amount", "a volume or a mass, such as 100 mL");
  if (text === undefined) return undefined;
  const isMass = parseQuantity(text, "mass").ok;
  const read = fields.taken("amount", parseQuantity(text, isMass ? "mass" : "volume"));
  if (read === undefined || (isMass && substance === undefined)) return undefined;
  const litres = isMass ? read.base / substance!.gravity : read.base * 1000;
  return fields.within("amount", litres / 1000, amounts) === undefined ? undefined : litres;
}

function roomIn(fields: Fields): number | undefined {
  const text = fields.needed("room", "30 m³, or length x width x height");
  const read = text === undefined ? undefined : fields.taken("room", parseRoom(text));
  return read === undefined ? undefined : fields.within("room", read, rooms);
}

const round = (value: number): string => formatNumber(roundedUp(value, 3), 3);

function answer({ name, exposure }: Substance, found: Vapour, units: UnitSystem): Answer {
  const { category, shareOfExposureLimit: breathed } = found;
  const figures: readonly (Figure | undefined)[] = [
    {
      name: "On average over the room, at most about",
      value: `${round(found.ppm)} ppm`,
      also: `${round(found.mgPerM3)} mg/m³`,
    },
    { name: "Of the lower flammable limit", value: `${round(found.shareOfLowerLimit * 100)} %` },
    exposure && {
      name: `Times the exposure limit (${exposure.name}, ${exposure.amount} ${exposure.unit})`,
      value: round(breathed!),
    },
    inBoth("Vapour", found.vapourL / 1000, vapourVolume, units, 3, roundedUp),
    inBoth(
      "Air that it makes flammable if it stays together",
      found.flammableAirM3,
      airVolume,
      units,
      3,
      roundedUp,
    ),
    category && {
      name: `Flammable liquid, category ${category.category}`,
      value: `${category.statement}, ${category.signal}`,
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
  const limits = [`${round(ofLower * 100)} % of the lower flammable limit`];
  if (breathed !== undefined) limits.push(`${round(breathed)} times the exposure limit`);
  return `${capital(name)}: an estimate of ${limits.join(", ")}, on average over the room`;
}
