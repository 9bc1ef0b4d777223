/** A thread by its name, and a screw by its measures. */

import { t } from "../../words.ts";
import { type Designation, parseDesignation } from "../designation.ts";
import type { Measured } from "../threads/identify.ts";
import { mmPerInch } from "../threads/size.ts";
import type { Fields } from "./fields.ts";

export function threadIn(fields: Fields): Designation | undefined {
  const text = fields.needed("thread", t`a thread such as M6, 1/4-20 UNC or 2 BA`);
  return text === undefined ? undefined : fields.taken("thread", parseDesignation(text));
}

/** Outside diameter, pitch or threads per inch, and the angle of the flanks where it is known. */
export function measuredIn(fields: Fields): Measured | undefined {
  fields.needed("diameter", t`a length such as 5.95 mm`);
  const [diameterMm, pitchMm] = [fields.measure("diameter"), pitchIn(fields)];
  const angle = fields.measure("angle");
  if (diameterMm === undefined || pitchMm === undefined || fields.troubles.length > 0) return undefined;
  return { diameterMm, pitchMm, angle };
}

function pitchIn(fields: Fields): number | undefined {
  const [pitch, tpi] = [fields.text("pitch"), fields.text("tpi")];
  if (pitch === undefined && tpi === undefined)
    return fields.missing("pitch", t`a pitch such as 1 mm, or threads per inch`);
  if (pitch !== undefined && tpi !== undefined)
    return fields.note("tpi", t`both a pitch and threads per inch`, t`one of them`);
  if (pitch !== undefined) return fields.measure("pitch");
  const perInch = fields.measure("tpi");
  return perInch === undefined ? undefined : mmPerInch / perInch;
}
