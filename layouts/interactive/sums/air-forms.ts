/** Forms of the sums on solvent vapour. */
import { substanceIds, substanceNamed } from "../../../src/engine/workshop/air/substances.ts";
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumField, SumForm } from "./form.ts";

/** Named so that the engine does not know it, and asks for its figures. */
const another = { value: "another substance", name: "another, with figures of its own" };

const substance: SumField = {
  name: "substance",
  label: "Substance",
  isSubstance: true,
  choices: [...substanceIds().map((id) => ({ value: id, name: nameOf(id) })), another],
};

function nameOf(id: string): string {
  const found = substanceNamed(id);
  return found.ok ? found.value.name : id;
}

const temperature: SumField = {
  name: "temperature",
  label: "Temperature of the room",
  example: { metric: "20 °C", inch: "68 °F" },
  hint: "20 °C where nothing is written",
  isOptional: true,
};

const own = (name: string, label: string, example: SumField["example"]): SumField => ({
  name,
  label,
  ...(example === undefined ? {} : { example }),
  isOptional: true,
});

const ownFigures = {
  title: "Figures of its safety data sheet",
  fields: [
    own("figures-from", "Where the figures come from", "safety data sheet of the supplier, its date"),
    own("molar-mass", "Molar mass, g/mol", "128"),
    own("gravity", "Weight against water", "0.78"),
    own("lower-limit", "Lower flammable limit", "0.8 %"),
    own("exposure-limit", "Exposure limit", "20 ppm or 350 mg/m³"),
    own("flash", "Flash point", { metric: "39 °C", inch: "102 °F" }),
    own("boils", "Boils at", { metric: "154 °C", inch: "309 °F" }),
  ],
} as const;

const firstOfAll =
  "Is there a safer substance, or one that is not flammable? Can it be less? Can it be done outdoors, or under extraction? Ask that before you reckon.";

export const vapourForm: SumForm = {
  id: "vapour",
  title: "Vapour in a room",
  foundBy: [
    "solvent vapor",
    "fumes",
    "flammable limit",
    "LEL and LFL",
    "exposure limit",
    "flash point",
    "spill",
  ],
  lead: `${firstOfAll} This estimates what a spill or a pan does to the air of a closed room if all of it evaporates.`,
  fields: [
    substance,
    { name: "amount", label: "Liquid that evaporates", example: { metric: "100 mL", inch: "4 US fl oz" } },
    {
      name: "room",
      label: "Room",
      example: { metric: "4 m x 3 m x 2.4 m", inch: "12 x 10 x 8 ft" },
      hint: "or 30 m³",
    },
    temperature,
  ],
  more: ownFigures,
  deferral: deferrals.vapour,
};

export const airForm: SumForm = {
  id: "air",
  title: "Fresh air needed",
  foundBy: ["ventilation", "air changes", "extraction", "dilution", "mixing factor"],
  lead: `${firstOfAll} This estimates the fresh air that keeps the average of a room below a limit while a liquid evaporates evenly.`,
  fields: [
    substance,
    { name: "rate", label: "Liquid that evaporates", example: { metric: "50 mL/h", inch: "0.1 US pt/h" } },
    {
      name: "limit",
      label: "Stay below",
      example: "200 ppm, 350 mg/m³ or 10 % LFL",
      hint: "the exposure limit where nothing is written",
      isOptional: true,
    },
    {
      name: "mixing",
      label: "Mixing factor",
      hint: "1 mixes perfectly, 10 hardly; 10 where nothing is written",
      isOptional: true,
    },
    temperature,
  ],
  more: ownFigures,
  deferral: deferrals.vapour,
};
