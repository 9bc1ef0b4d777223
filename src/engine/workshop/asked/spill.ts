/** What is filled in of a spill or a pan in a room. */

import { t } from "../../words.ts";
import { parseLitres } from "../air/amount-written.ts";
import { parseRoom } from "../air/room-written.ts";
import type { Substance } from "../air/substance.ts";
import { type Vapour, vapourOf } from "../air/vapour.ts";
import { parseQuantity } from "../quantity.ts";
import type { Fields } from "./fields.ts";
import { inRange } from "./measure.ts";
import { celsiusIn, substanceIn } from "./substance.ts";

export interface Spilt {
  readonly substance: Substance;
  readonly found: Vapour;
}

export function spiltIn(fields: Fields): Spilt | undefined {
  const substance = substanceIn(fields);
  const [litres, roomM3, celsius] = [litresIn(fields, substance), roomIn(fields), celsiusIn(fields)];
  if (substance === undefined || litres === undefined || roomM3 === undefined) return undefined;
  if (fields.troubles.length > 0) return undefined;
  const found = fields.reckoned(vapourOf({ substance, litres, roomM3, celsius }));
  return found && { substance, found };
}

/** Of a substance that is not known, a mass can't be judged, and a volume is. */
function litresIn(fields: Fields, substance: Substance | undefined): number | undefined {
  const text = fields.needed("amount", t`a volume or a mass, such as 100 mL`);
  if (text === undefined || (substance === undefined && parseQuantity(text, "mass").ok)) return undefined;
  const litres = fields.taken("amount", parseLitres(text, substance ?? { gravity: 1 }));
  return litres === undefined ? undefined : fields.taken("amount", inRange("amount", text, litres / 1000));
}

function roomIn(fields: Fields): number | undefined {
  const text = fields.needed("room", t`30 m³, or length x width x height`);
  const read = text === undefined ? undefined : fields.taken("room", parseRoom(text));
  return read === undefined ? undefined : fields.taken("room", inRange("room", text!, read));
}
