/** What a call says of a solvent. */
import { parseLimit } from "../../engine/workshop/air/exposure-written.ts";
import { type OwnFigures, type Substance, withOwnFigures } from "../../engine/workshop/air/substance.ts";
import { substanceIds, substanceNamed } from "../../engine/workshop/air/substances.ts";
import { type Call, WrongCall } from "../command.ts";
import { measure, needed, taken } from "./ask.ts";

const own = {
  "molar-mass": { type: "string", value: "N", help: "own figure: g/mol" },
  gravity: { type: "string", value: "N", help: "own figure: weight against water" },
  "lower-limit": { type: "string", value: "PART", help: 'own figure: lower flammable limit, "1.1 %"' },
  "exposure-limit": { type: "string", value: "LIMIT", help: 'own figure: "20 ppm" or "350 mg/m³"' },
  flash: { type: "string", value: "TEMPERATURE", help: "own figure: flash point" },
  boils: { type: "string", value: "TEMPERATURE", help: "own figure: boiling point" },
} as const;

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

const usualRoom = 20;

export function celsiusIn(call: Call): number {
  return temperature(call, "temperature") ?? usualRoom;
}

function temperature(call: Call, option: string): number | undefined {
  return measure(call, option, { dimension: "temperature", least: "-200 °C", greatest: "1000 °C" });
}

/** A row of the table, own figures in its place, or a substance of own figures alone. */
export function substanceIn(call: Call): Substance {
  const name = needed(call.text("substance"), "substance", "white-spirit");
  const known = substanceNamed(name);
  const given = Object.keys(own).filter((option) => call.text(option) !== undefined);
  if (given.length === 0) return taken(known, "--substance", name);
  const source = needed(call.text("figures-from"), "figures-from", '"safety data sheet of …, its date"');
  const lowerLimit = measure(call, "lower-limit", { dimension: "number", least: "0.01 %", greatest: "80 %" });
  const figures = ownFigures(call, source, lowerLimit);
  const substance = withOwnFigures(name, known.ok ? known.value : undefined, figures);
  if (!("missing" in substance)) return substance;
  const options = substance.missing.map((one) => `--${optionOf[one]}`).join(", ");
  throw new WrongCall(`"${name.slice(0, 60)}" is not known here; of its own figures ${options} are missing.`);
}

const optionOf = { molarMass: "molar-mass", gravity: "gravity", lowerLimit: "lower-limit" } as const;

function ownFigures(call: Call, source: string, lowerLimit: number | undefined): OwnFigures {
  const limit = call.text("exposure-limit");
  const exposure =
    limit === undefined
      ? undefined
      : taken(parseLimit(limit, "limit as given", lowerLimit ?? 0), "--exposure-limit", limit);
  return {
    source: `as given in the call: ${source.slice(0, 200)}`,
    ...defined(
      "molarMass",
      measure(call, "molar-mass", { dimension: "number", least: "2", greatest: "1000" }),
    ),
    ...defined("gravity", measure(call, "gravity", { dimension: "number", least: "0.3", greatest: "4" })),
    ...defined("lowerLimit", lowerLimit),
    ...defined("exposure", exposure),
    ...defined("flashC", temperature(call, "flash")),
    ...defined("boilingC", temperature(call, "boils")),
  };
}

function defined<Name extends string, Value>(
  name: Name,
  value: Value | undefined,
): Partial<Record<Name, Value>> {
  return value === undefined ? {} : ({ [name]: value } as Record<Name, Value>);
}
