/** What the fields say of a solvent. */
import { parseLimit } from "../../engine/workshop/air/exposure-written.ts";
import type { ExposureLimit } from "../../engine/workshop/air/substance.ts";
import { type OwnFigures, type Substance, withOwnFigures } from "../../engine/workshop/air/substance.ts";
import { substanceNamed } from "../../engine/workshop/air/substances.ts";
import type { Fields } from "./fields.ts";

const usualRoom = 20;

/** Of the room, °C. */
export const celsiusIn = (fields: Fields): number => temperature(fields, "temperature") ?? usualRoom;

function temperature(fields: Fields, field: string): number | undefined {
  return fields.measure(field, { dimension: "temperature", least: "-200 °C", greatest: "1000 °C" });
}

const ownFields = ["molar-mass", "gravity", "lower-limit", "exposure-limit", "flash", "boils"] as const;
const fieldOf = { molarMass: "molar-mass", gravity: "gravity", lowerLimit: "lower-limit" } as const;

/** A row of the table, own figures in its place, or a substance of own figures alone. */
export function substanceIn(fields: Fields): Substance | undefined {
  const name = fields.needed("substance", "a substance of the list");
  if (name === undefined) return undefined;
  const known = substanceNamed(name);
  if (ownFields.every((field) => fields.text(field) === undefined)) return fields.taken("substance", known);
  const source = fields.needed(
    "figures-from",
    "where your figures come from: the safety data sheet and its date",
  );
  if (source === undefined) return undefined;
  const found = withOwnFigures(name, known.ok ? known.value : undefined, ownFigures(fields, source));
  if (!("missing" in found)) return found;
  for (const one of found.missing)
    fields.note(fieldOf[one], "Nothing is written here; expected the figure of the safety data sheet.");
  return undefined;
}

function ownFigures(fields: Fields, source: string): OwnFigures {
  const number = (field: string, least: string, greatest: string) =>
    fields.measure(field, { dimension: "number", least, greatest });
  const lowerLimit = number("lower-limit", "0.01 %", "80 %");
  return defined({
    source: `as given here: ${source.slice(0, 200)}`,
    molarMass: number("molar-mass", "2", "1000"),
    gravity: number("gravity", "0.3", "4"),
    lowerLimit,
    exposure: limitIn(fields, "exposure-limit", "limit as given", lowerLimit ?? 0),
    flashC: temperature(fields, "flash"),
    boilingC: temperature(fields, "boils"),
  });
}

export function limitIn(
  fields: Fields,
  field: string,
  name: string,
  lowerLimit: number,
): ExposureLimit | undefined {
  const text = fields.text(field);
  return text === undefined ? undefined : fields.taken(field, parseLimit(text, name, lowerLimit));
}

type Maybe<Shape> = { readonly [Name in keyof Shape]: Shape[Name] | undefined };

/** Without the fields that say nothing. */
function defined(figures: Maybe<OwnFigures> & { readonly source: string }): OwnFigures {
  const said = Object.entries(figures).filter(([, value]) => value !== undefined);
  return Object.fromEntries(said) as unknown as OwnFigures;
}
