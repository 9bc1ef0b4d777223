/** Forms of the sums on solvent vapour. */
import { t } from "../../../src/engine/words.ts";
import { substanceIds, substanceNamed } from "../../../src/engine/workshop/air/substances.ts";
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumField, SumForm } from "./form.ts";

/** Named so that the engine does not know it, and asks for its figures. */
const another = { value: t`another substance`, name: t`another, with figures of its own` };

const substance: SumField = {
  name: "substance",
  label: t`Substance`,
  isSubstance: true,
  choices: [...substanceIds().map((id) => ({ value: id, name: nameOf(id) })), another],
};

function nameOf(id: string): string {
  const found = substanceNamed(id);
  return found.ok ? found.value.name : id;
}

const temperature: SumField = {
  name: "temperature",
  label: t`Temperature of the room`,
  example: { metric: "20 °C", inch: "68 °F" },
  hint: t`20 °C where nothing is written`,
  isOptional: true,
};

const own = (name: string, label: string, example: SumField["example"]): SumField => ({
  name,
  label,
  ...(example === undefined ? {} : { example }),
  isOptional: true,
});

const ownFigures = {
  title: t`Figures of its safety data sheet`,
  fields: [
    own("figures-from", t`Where the figures come from`, t`safety data sheet of the supplier, its date`),
    own("molar-mass", t`Molar mass, g/mol`, "128"),
    own("gravity", t`Weight against water`, "0.78"),
    own("lower-limit", t`Lower flammable limit`, "0.8 %"),
    own("exposure-limit", t`Exposure limit`, t`20 ppm or 350 mg/m³`),
    own("flash", t`Flash point`, { metric: "39 °C", inch: "102 °F" }),
    own("boils", t`Boils at`, { metric: "154 °C", inch: "309 °F" }),
  ],
} as const;

const firstOfAll = t`Is there a safer substance, or one that is not flammable? Can it be less? Can it be done outdoors, or under extraction? Ask that before you reckon.`;

export const vapourForm: SumForm = {
  id: "vapour",
  title: t`Vapour in a room`,
  foundBy: [
    t`solvent vapor`,
    "fumes",
    t`flammable limit`,
    t`LEL and LFL`,
    t`exposure limit`,
    t`flash point`,
    "spill",
  ],
  lead: t`${firstOfAll} This estimates what a spill or a pan does to the air of a closed room if all of it evaporates.`,
  fields: [
    substance,
    { name: "amount", label: t`Liquid that evaporates`, example: { metric: "100 mL", inch: "4 US fl oz" } },
    {
      name: "room",
      label: t`Room`,
      example: { metric: "4 m x 3 m x 2.4 m", inch: "12 x 10 x 8 ft" },
      hint: t`or 30 m³`,
    },
    temperature,
  ],
  more: ownFigures,
  deferral: deferrals.vapour,
};

export const airForm: SumForm = {
  id: "air",
  title: t`Fresh air needed`,
  foundBy: ["ventilation", t`air changes`, "extraction", "dilution", t`mixing factor`],
  lead: t`${firstOfAll} This estimates the fresh air that keeps the average of a room below a limit while a liquid evaporates evenly.`,
  fields: [
    substance,
    { name: "rate", label: t`Liquid that evaporates`, example: { metric: "50 mL/h", inch: "0.1 US pt/h" } },
    {
      name: "limit",
      label: t`Stay below`,
      example: t`200 ppm, 350 mg/m³ or 10 % LFL`,
      hint: t`the exposure limit where nothing is written`,
      isOptional: true,
    },
    {
      name: "mixing",
      label: t`Mixing factor`,
      hint: t`1 mixes perfectly, 10 hardly; 10 where nothing is written`,
      isOptional: true,
    },
    temperature,
  ],
  more: ownFigures,
  deferral: deferrals.vapour,
};
