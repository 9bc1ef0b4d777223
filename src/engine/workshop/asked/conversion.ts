/** What is filled in of a quantity to be told in another unit. */

import { t } from "../../words.ts";
import { convert, parseQuantity, type Quantity } from "../quantity.ts";
import { unitsOf } from "../units.ts";
import type { Fields } from "./fields.ts";

export interface Conversion {
  readonly from: Quantity;
  /** Undefined where no unit is named. */
  readonly to: Quantity | undefined;
  /** Significant figures to be printed. */
  readonly figures: number;
}

export const conversionSource = t`NIST SP 811, Appendix B, from the definitions of the units`;

export function conversionIn(fields: Fields): Conversion | undefined {
  const text = fields.needed("quantity", t`a quantity such as 8 lbf·in`);
  const from = text === undefined ? undefined : fields.taken("quantity", parseQuantity(text));
  if (text === undefined || from === undefined) return undefined;
  const unit = fields.text("unit");
  const to = unit === undefined ? undefined : fields.taken("unit", convert(from, unit));
  return unit !== undefined && to === undefined ? undefined : { from, to, figures: figuresOf(text) };
}

/** In every other unit of its kind, in the order of the table of units. */
export function inOtherUnits(from: Quantity): Quantity[] {
  return unitsOf(from.dimension)
    .filter(({ unit }) => unit !== from.unit)
    .flatMap(({ unit }) => {
      const to = convert(from, unit);
      return to.ok ? [to.value] : [];
    });
}

/** As many significant figures as were written, four at least and ten at most. */
function figuresOf(text: string): number {
  const written = (text.match(/[\d.,]+/g) ?? []).map((digits) =>
    digits.replace(/[.,]/g, "").replace(/^0+/, ""),
  );
  return Math.min(10, Math.max(4, ...written.map(({ length }) => length)));
}
