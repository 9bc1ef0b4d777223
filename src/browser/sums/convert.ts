/** One quantity in another unit, or in every unit of its kind. */
import { formatNumber, formatQuantity } from "../../engine/workshop/format-quantity.ts";
import { convert as convertQuantity, parseQuantity, type Quantity } from "../../engine/workshop/quantity.ts";
import { unitsOf } from "../../engine/workshop/units.ts";
import type { Answer, Sum } from "./answer.ts";
import type { Fields } from "./fields.ts";

export const convert: Sum = {
  id: "convert",
  reckon(fields) {
    const text = fields.needed("quantity", "a quantity such as 8 lbf·in");
    const from = text === undefined ? undefined : fields.taken("quantity", parseQuantity(text));
    if (text === undefined || from === undefined) return undefined;
    const figures = figuresOf(text);
    const unit = fields.text("unit");
    return unit === undefined ? intoAll(from, figures) : intoOne(fields, from, unit, figures);
  },
};

function intoOne(fields: Fields, from: Quantity, unit: string, figures: number): Answer | undefined {
  const to = fields.taken("unit", convertQuantity(from, unit));
  if (to === undefined) return undefined;
  return {
    headline: `${formatQuantity(from, figures)} = ${formatQuantity(to, figures)}`,
    figures: [],
    grounds,
  };
}

function intoAll(from: Quantity, figures: number): Answer {
  const others = unitsOf(from.dimension)
    .filter(({ unit }) => unit !== from.unit)
    .flatMap(({ unit }) => {
      const to = convertQuantity(from, unit);
      const name = unit === "" ? "as a bare number" : unit;
      return to.ok ? [{ name, value: formatNumber(to.value.amount, figures) }] : [];
    });
  return { headline: `${formatQuantity(from, figures)} is`, figures: others, grounds };
}

const grounds = {
  assumptions: [],
  warnings: [],
  sources: ["NIST SP 811, Appendix B, from the definitions of the units"],
};

/** As many significant figures as were written, four at least and ten at most. */
function figuresOf(text: string): number {
  const written = (text.match(/[\d.,]+/g) ?? []).map((digits) =>
    digits.replace(/[.,]/g, "").replace(/^0+/, ""),
  );
  return Math.min(10, Math.max(4, ...written.map(({ length }) => length)));
}
