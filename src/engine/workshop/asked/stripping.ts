/** What is filled in of a screw in its hole. */

import { t } from "../../words.ts";
import { type Material, materialNamed, ownMaterial } from "../bolts/materials.ts";
import { type Engagement, type Stripping, stripping } from "../bolts/strip.ts";
import { bearingIn, strengthIn } from "./bolt.ts";
import type { Fields } from "./fields.ts";
import { threadIn } from "./thread.ts";

/** Slippery on purpose, where no friction is given: less of it strips at a smaller torque. */
const carefulFriction = 0.1;

export interface Stripped {
  readonly ask: Engagement;
  readonly found: Stripping;
}

export function strippedIn(fields: Fields): Stripped | undefined {
  const ask = engagementIn(fields);
  if (ask === undefined || fields.troubles.length > 0) return undefined;
  const found = fields.reckoned(stripping(ask));
  return found && { ask, found };
}

function engagementIn(fields: Fields): Engagement | undefined {
  const size = threadIn(fields);
  fields.needed("engagement", t`a length such as 8 mm`);
  const [engagementMm, material] = [fields.measure("engagement"), materialIn(fields)];
  const [screw, friction] = [strengthIn(fields, size), fields.measure("friction") ?? carefulFriction];
  const bearing = size && bearingIn(fields, size);
  if (size === undefined || engagementMm === undefined || material === undefined) return undefined;
  if (screw === undefined || bearing === undefined) return undefined;
  return { size, engagementMm, material, screw, friction, bearing };
}

function materialIn(fields: Fields): Material | undefined {
  const [name, own] = [fields.text("material"), fields.text("shear")];
  if (name === undefined && own === undefined)
    return fields.missing("material", t`a material such as aluminium-a380, or its shear strength`);
  if (name !== undefined && own !== undefined)
    return fields.note("shear", t`both a material and a shear strength`, t`one of them`);
  if (name !== undefined) return fields.taken("material", materialNamed(name));
  const shearMPa = fields.measure("shear");
  return shearMPa === undefined ? undefined : ownMaterial(shearMPa);
}
