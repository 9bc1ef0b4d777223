/** One quantity in another unit, or in every unit of its kind. */
import { t } from "../../engine/words.ts";
import {
  type Conversion,
  conversionIn,
  conversionSource,
  inOtherUnits,
} from "../../engine/workshop/asked/conversion.ts";
import { formatNumber, formatQuantity } from "../../engine/workshop/format-quantity.ts";
import type { Answer, Figure, Sum } from "./answer.ts";

export const convert: Sum = {
  id: "convert",
  reckon(fields) {
    const asked = conversionIn(fields);
    return asked && answer(asked);
  },
};

const grounds = { assumptions: [], warnings: [], sources: [conversionSource] };

function answer(asked: Conversion): Answer {
  const { from, to, figures } = asked;
  const written = formatQuantity(from, figures);
  if (to === undefined) return { headline: t`${written} is`, figures: allOf(asked), grounds };
  return { headline: `${written} = ${formatQuantity(to, figures)}`, figures: [], grounds };
}

function allOf({ from, figures }: Conversion): Figure[] {
  return inOtherUnits(from).map(({ amount, unit }) => ({
    name: unit === "" ? t`as a bare number` : unit,
    value: formatNumber(amount, figures),
  }));
}
