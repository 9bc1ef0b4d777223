/** What the fields say of a bolt. */
import { type Bearing, bearingOf } from "../../engine/workshop/bolts/bearing.ts";
import { type Strength, strengthOf } from "../../engine/workshop/bolts/strength.ts";
import type { Lubrication } from "../../engine/workshop/bolts/tighten.ts";
import type { ThreadSize } from "../../engine/workshop/threads/size.ts";
import type { Fields } from "./fields.ts";

/** The size is undefined where the thread is not known yet: the class is judged all the same, as in a small bolt. */
export function strengthIn(fields: Fields, size: ThreadSize | undefined): Strength | undefined {
  const text = fields.needed("class", "a class such as 8.8, A2-70 or brass");
  return text === undefined ? undefined : fields.taken("class", strengthOf(text, size?.diameterMm ?? 1));
}

export function bearingIn(fields: Fields, size: ThreadSize): Bearing | undefined {
  const bearing = bearingOf(size, fields.lengthMm("bearing"), fields.lengthMm("hole"));
  if (bearing.outerMm > bearing.holeMm) return bearing;
  const text = `Found a ring of ${bearing.outerMm} mm around a hole of ${bearing.holeMm} mm; expected a ring that is larger than the hole.`;
  return fields.note(fields.text("bearing") === undefined ? "hole" : "bearing", text);
}

export function lubricationIn(fields: Fields): Lubrication | undefined {
  const [friction, factor] = [fields.text("friction"), fields.text("nut-factor")];
  if (friction === undefined && factor === undefined) {
    return fields.note(
      "friction",
      "Nothing is written here; expected a friction (0.10 greased, 0.15 oiled, 0.2 or more dry) or a nut factor: torque depends on nothing more.",
    );
  }
  if (friction !== undefined && factor !== undefined)
    return fields.note("nut-factor", "Found both a friction and a nut factor; expected one of them.");
  return factor === undefined ? byFriction(fields) : byNutFactor(fields);
}

function byFriction(fields: Fields): Lubrication | undefined {
  const [thread, head] = [fields.number("friction"), fields.number("head-friction")];
  return thread === undefined ? undefined : { kind: "friction", thread, head: head ?? thread };
}

function byNutFactor(fields: Fields): Lubrication | undefined {
  const nutFactor = fields.number("nut-factor");
  if (fields.text("head-friction") !== undefined)
    return fields.note(
      "head-friction",
      "Found a friction of the head; expected none with a nut factor, which holds it already.",
    );
  return nutFactor === undefined ? undefined : { kind: "nut-factor", nutFactor };
}
