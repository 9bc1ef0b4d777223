/** What is filled in of a solvent. */

import { t } from "../../words.ts";
import { parseLimit } from "../air/exposure-written.ts";
import { type ExposureLimit, type OwnFigures, type Substance, withOwnFigures } from "../air/substance.ts";
import { substanceNamed } from "../air/substances.ts";
import type { Fields } from "./fields.ts";

const usualRoom = 20;

/** Of the room, °C. */
export function celsiusIn(fields: Fields): number {
  return fields.measure("temperature") ?? usualRoom;
}

/** Fields of a substance's own figures; they need `figures-from` beside them. */
export const ownFigureFields = [
  "molar-mass",
  "gravity",
  "lower-limit",
  "exposure-limit",
  "flash",
  "boils",
] as const;

const fieldOf = { molarMass: "molar-mass", gravity: "gravity", lowerLimit: "lower-limit" } as const;

/** A row of the table, own figures in its place, or a substance of own figures alone. */
export function substanceIn(fields: Fields): Substance | undefined {
  const name = fields.needed("substance", t`a substance such as white-spirit`);
  if (name === undefined) return undefined;
  const known = substanceNamed(name);
  if (ownFigureFields.every((field) => fields.text(field) === undefined))
    return fields.taken("substance", known);
  const source = fields.needed(
    "figures-from",
    t`where your figures come from: the safety data sheet and its date`,
  );
  if (source === undefined) return undefined;
  const found = withOwnFigures(name, known.ok ? known.value : undefined, ownFigures(fields, source));
  if (!("missing" in found)) return found;
  for (const one of found.missing) fields.missing(fieldOf[one], t`the figure of the safety data sheet`);
  return undefined;
}

function ownFigures(fields: Fields, source: string): OwnFigures {
  const lowerLimit = fields.measure("lower-limit");
  return defined({
    source: t`as given here: ${source.slice(0, 200)}`,
    molarMass: fields.measure("molar-mass"),
    gravity: fields.measure("gravity"),
    lowerLimit,
    exposure: limitIn(fields, "exposure-limit", t`limit as given`, lowerLimit ?? 0),
    flashC: fields.measure("flash"),
    boilingC: fields.measure("boils"),
  });
}

/** A limit on what one breathes; a share of the lower limit is reckoned from the one that is handed in. */
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

/** Without the figures that say nothing. */
function defined(figures: Maybe<OwnFigures> & { readonly source: string }): OwnFigures {
  const said = Object.entries(figures).filter(([, value]) => value !== undefined);
  return Object.fromEntries(said) as unknown as OwnFigures;
}
