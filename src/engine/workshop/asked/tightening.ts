/** What is filled in of a bolt to be tightened. */

import { t } from "../../words.ts";
import { type Joint, pullOf, type Tightening, tighten } from "../bolts/tighten.ts";
import { bearingIn, lubricationIn, strengthIn } from "./bolt.ts";
import type { Fields } from "./fields.ts";
import { threadIn } from "./thread.ts";

export interface Tightened {
  readonly joint: Joint;
  readonly found: Tightening;
  /** A torque was given, and the pull that it gives was asked for. */
  readonly isWayBack: boolean;
}

/** The torque for a share of the yield point or, where a torque is given, the way back. */
export function tightenedIn(fields: Fields): Tightened | undefined {
  const joint = jointIn(fields);
  const [torqueNm, share] = [fields.measure("torque"), fields.measure("share")];
  if (torqueNm !== undefined && share !== undefined)
    fields.note("share", t`both a torque and a share of the yield point`, t`one of them`);
  if (joint === undefined || fields.troubles.length > 0) return undefined;
  const found = fields.reckoned(torqueNm === undefined ? tighten(joint, share) : pullOf(joint, torqueNm));
  return found && { joint, found, isWayBack: torqueNm !== undefined };
}

function jointIn(fields: Fields): Joint | undefined {
  const size = threadIn(fields);
  const [strength, lubrication] = [strengthIn(fields, size), lubricationIn(fields)];
  const bearing = size && bearingIn(fields, size);
  if (size === undefined || strength === undefined || lubrication === undefined || bearing === undefined)
    return undefined;
  return { size, strength, lubrication, bearing, used: fields.isTicked("used") };
}
