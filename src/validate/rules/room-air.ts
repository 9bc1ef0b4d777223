/** A substance whose vapour can hurt indoors has a safety message at the step that uses it. */

import type { Substance as Figures } from "../../engine/workshop/air/substance.ts";
import { withOwnFigures } from "../../engine/workshop/air/substance.ts";
import { substanceNamed } from "../../engine/workshop/air/substances.ts";
import { vapourOf } from "../../engine/workshop/air/vapour.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { Module } from "../../model/module.ts";
import type { Room } from "../../model/programme.ts";
import type { Substance } from "../../model/sheet.ts";
import { inStep, moduleRule } from "./rule.ts";

/** Of the lower flammable limit: where alarms are commonly set first (NFPA 69, 25 %; 10 % common practice). */
const share = 0.1;

export const roomAir = moduleRule("room air", (module, content, reporter) => {
  for (const step of module.procedure.steps) {
    for (const [index, id] of step.substances.entries()) {
      const sheet = content.substances.get(id);
      if (sheet === undefined || sheet.hazards.some((hazard) => step.hazards.includes(hazard))) continue;
      const reasons = dangers(sheet, amountIndoors(id, module), content.programme.room);
      if (reasons.length === 0) continue;
      reporter.report(
        "vapour-unguarded",
        inStep(content, module, step, ["substances", index]),
        `"${id}" is used indoors: ${reasons.join("; ")}. This step names none of its hazards${sheet.hazards.length === 0 ? ", and its sheet has none" : ` (${sheet.hazards.join(", ")})`}`,
      );
    }
  }
});

/** Litres, or undefined where it is used outdoors or nobody says how much. */
function amountIndoors(id: string, module: Module): number | undefined {
  const entry = module.substances.find(({ use }) => use === id);
  if (entry?.amount === undefined || /outdoors|outside|open air/i.test(entry.place ?? "")) return undefined;
  const read = parseQuantity(entry.amount, "volume");
  return read.ok ? read.value.base * 1000 : undefined;
}

function dangers(sheet: Substance, litres: number | undefined, room: Room): string[] {
  if (litres === undefined) return [];
  const figures = figuresOf(sheet);
  if (figures === undefined) return [];
  const { volumeM3: roomM3, celsius, noIgnition } = room;
  const vapour = vapourOf({ substance: figures, litres, roomM3, celsius });
  if (!vapour.ok) return [];
  const { shareOfLowerLimit, shareOfExposureLimit } = vapour.value;
  const air = `in ${roomM3} m³${room.isStated ? "" : " (assumed; say room: in programme.yaml)"}`;
  const flash = figures.flashC;
  return [
    shareOfLowerLimit > share
      ? `all of it as vapour ${air} is ${percent(shareOfLowerLimit)} of its lower flammable limit`
      : undefined,
    shareOfExposureLimit !== undefined && shareOfExposureLimit > 1
      ? `${times(shareOfExposureLimit)} times its exposure limit (${figures.exposure!.name})`
      : undefined,
    flash !== undefined && flash <= celsius && !noIgnition
      ? `its flash point, ${Math.round(flash)} °C, is not above the ${celsius} °C of the room, from which no ignition is excluded`
      : undefined,
  ].filter((reason) => reason !== undefined);
}

/** Those of its own sheet before those of the table of solvents; undefined where too little is known. */
function figuresOf({ id, title, air }: Substance): Figures | undefined {
  const byId = substanceNamed(id);
  const known = byId.ok ? byId.value : undefined;
  if (air === undefined) return known;
  const made = withOwnFigures(title, known, air);
  return "missing" in made ? undefined : made;
}

const percent = (part: number): string => `${Math.round(part * 100)} %`;
const times = (part: number): string => String(Number(part.toPrecision(2)));
