/** What is filled in of a bolt: its class, its friction, the ring under its head. */

import { t } from "../../words.ts";
import { type Bearing, bearingOf } from "../bolts/bearing.ts";
import { type Strength, strengthOf } from "../bolts/strength.ts";
import type { Lubrication } from "../bolts/tighten.ts";
import type { ThreadSize } from "../threads/size.ts";
import type { Fields } from "./fields.ts";

/** Where the thread is not known yet the class is judged all the same, as in a small bolt. */
const smallBoltMm = 1;

export function strengthIn(fields: Fields, size: ThreadSize | undefined): Strength | undefined {
  const text = fields.needed("class", t`a class such as 8.8, A2-70 or brass`);
  return text === undefined
    ? undefined
    : fields.taken("class", strengthOf(text, size?.diameterMm ?? smallBoltMm));
}

export function bearingIn(fields: Fields, size: ThreadSize): Bearing | undefined {
  const bearing = bearingOf(size, fields.measure("bearing"), fields.measure("hole"));
  if (bearing.outerMm > bearing.holeMm) return bearing;
  return fields.note(
    fields.text("bearing") === undefined ? "hole" : "bearing",
    t`a ring of ${bearing.outerMm} mm around a hole of ${bearing.holeMm} mm`,
    t`a ring that is larger than the hole`,
  );
}

/** A friction, or a nut factor that stands for it: one of them, since torque depends on nothing more. */
export function lubricationIn(fields: Fields): Lubrication | undefined {
  const [friction, factor] = [fields.text("friction"), fields.text("nut-factor")];
  if (friction === undefined && factor === undefined) {
    return fields.missing(
      "friction",
      t`a friction (0.10 greased, 0.15 oiled, 0.2 or more dry) or a nut factor: torque depends on nothing more`,
    );
  }
  if (friction !== undefined && factor !== undefined)
    return fields.note("nut-factor", t`both a friction and a nut factor`, t`one of them`);
  return factor === undefined ? byFriction(fields) : byNutFactor(fields);
}

function byFriction(fields: Fields): Lubrication | undefined {
  const [thread, head] = [fields.measure("friction"), fields.measure("head-friction")];
  return thread === undefined ? undefined : { kind: "friction", thread, head: head ?? thread };
}

function byNutFactor(fields: Fields): Lubrication | undefined {
  const nutFactor = fields.measure("nut-factor");
  if (fields.text("head-friction") !== undefined)
    return fields.note(
      "head-friction",
      t`a friction of the head`,
      t`none with a nut factor, which holds it already`,
    );
  return nutFactor === undefined ? undefined : { kind: "nut-factor", nutFactor };
}
