/** What gives first: the screw, its thread, or that of the hole. */
import { type Material, materialNamed } from "../../engine/workshop/bolts/materials.ts";
import {
  type Engagement,
  type Stripping,
  stripping,
  type WeakPart,
} from "../../engine/workshop/bolts/strip.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedDown, roundedUp } from "../../engine/workshop/grounds.ts";
import { capital } from "../page/words.ts";
import { force, inBoth, length, torqueUnits, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";
import { bearingIn, strengthIn } from "./bolt-fields.ts";
import type { Fields } from "./fields.ts";
import { threadIn } from "./thread.ts";

/** Slippery on purpose: less friction strips at a smaller torque. */
const carefulFriction = 0.1;

export const strip: Sum = {
  id: "strip",
  reckon(fields, units) {
    const ask = engagementIn(fields);
    if (ask === undefined || fields.troubles.length > 0) return undefined;
    const found = fields.reckoned(stripping(ask));
    return found && answer(ask, found, units);
  },
};

function engagementIn(fields: Fields): Engagement | undefined {
  const size = threadIn(fields);
  fields.needed("engagement", "a length such as 8 mm");
  const [engagementMm, material] = [fields.lengthMm("engagement"), materialIn(fields)];
  const [screw, friction] = [strengthIn(fields, size), fields.number("friction") ?? carefulFriction];
  const bearing = size && bearingIn(fields, size);
  if (size === undefined || engagementMm === undefined || material === undefined) return undefined;
  if (screw === undefined || bearing === undefined) return undefined;
  return { size, engagementMm, material, screw, friction, bearing };
}

function materialIn(fields: Fields): Material | undefined {
  const [name, own] = [fields.text("material"), fields.text("shear")];
  if (name === undefined && own === undefined)
    return fields.note("material", "Nothing is chosen; expected a material, or its shear strength below.");
  if (name !== undefined && own !== undefined)
    return fields.note("shear", "Found both a material and a shear strength; expected one of them.");
  if (name !== undefined) return fields.taken("material", materialNamed(name));
  const shear = fields.measure("shear", { dimension: "pressure", least: "1 MPa", greatest: "2 GPa" });
  if (shear === undefined) return undefined;
  const source = "its shear strength as given here";
  return { id: "own", name: "a material of your own", source, shearMPa: shear / 1e6, standing: "published" };
}

const weakWords: Readonly<Record<WeakPart, string>> = {
  "screw breaks": "the screw breaks",
  "internal strips": "the thread in the hole strips",
  "external strips": "the thread of the screw strips",
};

/** Loads are rounded down, lengths up. */
function answer(ask: Engagement, found: Stripping, units: UnitSystem): Answer {
  const { size, screw, engagementMm, material } = ask;
  const { loads, weaker, whenTightened } = found;
  const pull = (part: WeakPart) =>
    inBoth(`${capital(weakWords[part])} at`, loads[part], force, units, 3, roundedDown);
  return {
    headline: `${size.designation}, ${screw.name}, ${formatNumber(engagementMm)} mm in ${material.name}: ${weakWords[weaker]} first.`,
    figures: [
      pull("screw breaks"),
      pull("internal strips"),
      pull("external strips"),
      {
        ...inBoth("", whenTightened.torqueNm, torqueUnits(whenTightened.torqueNm), units, 3, roundedDown),
        name: `While it is tightened, ${weakWords[whenTightened.weaker]} at`,
      },
      inBoth(
        "Engagement for the screw to break first",
        found.engagementNeededMm / 1000,
        length,
        units,
        3,
        roundedUp,
      ),
    ],
    grounds: found,
  };
}
