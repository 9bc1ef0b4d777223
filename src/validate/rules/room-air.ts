/** A substance whose vapour can hurt indoors has a safety message at the step that uses it. */

import type { Substance as Figures } from "../../engine/workshop/air/substance.ts";
import { withOwnFigures } from "../../engine/workshop/air/substance.ts";
import { substanceNamed } from "../../engine/workshop/air/substances.ts";
import { vapourOf } from "../../engine/workshop/air/vapour.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { Module, ModuleStep, SubstanceUsed } from "../../model/module.ts";
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
      const reasons = dangers(sheet, step, module, content.programme.room);
      if (reasons.length === 0) continue;
      reporter.report(
        "vapour-unguarded",
        inStep(content, module, step, ["substances", index]),
        `"${id}" is used indoors: ${reasons.join("; ")}. This step names none of its hazards${sheet.hazards.length === 0 ? ", and its sheet has none" : ` (${sheet.hazards.join(", ")})`}`,
      );
    }
  }
});

function dangers(sheet: Substance, step: ModuleStep, module: Module, room: Room): string[] {
  const entry = module.substances.find(({ use }) => use === sheet.id);
  if (/outdoors|outside|open air/i.test(entry?.place ?? "")) return [];
  const figures = figuresOf(sheet);
  const flashC = sheet.air?.flashC ?? figures?.flashC;
  return [
    ...(figures === undefined ? [] : inTheAir(figures, litresOf(entry), room)),
    ...nearIgnition(flashC, step, room),
  ];
}

/** Undefined where nobody says how much. */
function litresOf(entry: SubstanceUsed | undefined): number | undefined {
  const read = entry?.amount === undefined ? undefined : parseQuantity(entry.amount, "volume");
  return read?.ok === true ? read.value.base * 1000 : undefined;
}

/** All of it as vapour that stays in the room, against the limits. */
function inTheAir(substance: Figures, litres: number | undefined, room: Room): string[] {
  if (litres === undefined) return [];
  const { volumeM3: roomM3, celsius } = room;
  const vapour = vapourOf({ substance, litres, roomM3, celsius });
  if (!vapour.ok) return [];
  const { shareOfLowerLimit: ofLower, shareOfExposureLimit: breathed } = vapour.value;
  const air = `in ${roomM3} m³${room.isStated ? "" : " (assumed; say room: in programme.yaml)"}`;
  const { lowerLimit, exposure } = substance;
  const reasons = [
    ofLower > share ? `${percent(ofLower)} of its lower flammable limit (${percent(lowerLimit)})` : undefined,
    breathed !== undefined && breathed > 1
      ? `${times(breathed)} times its exposure limit (${exposure!.name}, ${exposure!.amount} ${exposure!.unit})`
      : undefined,
  ].filter((reason) => reason !== undefined);
  return reasons.length === 0 ? [] : [`all of it as vapour ${air} is ${reasons.join(" and ")}`];
}

/** Hot work is a source of ignition that the step names itself. */
function nearIgnition(
  flashC: number | undefined,
  { hotWork }: ModuleStep,
  { celsius, noIgnition }: Room,
): string[] {
  if (flashC === undefined || flashC > celsius || (noIgnition && !hotWork)) return [];
  const source = hotWork ? "and this is hot work" : "from which no ignition is excluded";
  return [`its flash point, ${Math.round(flashC)} °C, is not above the ${celsius} °C of the room, ${source}`];
}

/** Those of its own sheet before those of the table of solvents; undefined where too little is known. */
function figuresOf({ id, title, air }: Substance): Figures | undefined {
  const byId = substanceNamed(id);
  const known = byId.ok ? byId.value : undefined;
  if (air === undefined) return known;
  const made = withOwnFigures(title, known, air);
  return "missing" in made ? undefined : made;
}

const percent = (part: number): string => `${Number((part * 100).toPrecision(2))} %`;
const times = (part: number): string => String(Number(part.toPrecision(2)));
