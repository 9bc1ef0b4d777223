/** Options of the sums on solvents. */
import { substanceIds } from "../../engine/workshop/air/substances.ts";
import type { ownFigureFields } from "../../engine/workshop/asked/substance.ts";
import type { Command } from "../command.ts";

const own = {
  "molar-mass": { type: "string", value: "N", help: "own figure: g/mol" },
  gravity: { type: "string", value: "N", help: "own figure: weight against water" },
  "lower-limit": { type: "string", value: "PART", help: 'own figure: lower flammable limit, "1.1 %"' },
  "exposure-limit": { type: "string", value: "LIMIT", help: 'own figure: "20 ppm" or "350 mg/m³"' },
  flash: { type: "string", value: "TEMPERATURE", help: "own figure: flash point" },
  boils: { type: "string", value: "TEMPERATURE", help: "own figure: boiling point" },
} as const satisfies Record<(typeof ownFigureFields)[number], Command["options"][string]>;

export const substanceOptions = {
  substance: { type: "string", value: "NAME", help: `${substanceIds().join(", ")}, or your own` },
  ...own,
  "figures-from": {
    type: "string",
    value: "TEXT",
    help: "where your own figures come from: the safety data sheet and its date",
  },
  temperature: { type: "string", value: "TEMPERATURE", help: "of the room (default: 20 °C)" },
} as const;
