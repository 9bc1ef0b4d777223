import { t } from "../words.ts";
import { formatQuantity } from "../workshop/format-quantity.ts";
import { parseQuantity, type Quantity, type QuantityCode, spanInBase } from "../workshop/quantity.ts";
import { bad, good, type Result } from "../workshop/result.ts";
import { withArticle } from "../workshop/units.ts";

/** How far an answer may be out, either way. */
export type Tolerance =
  /** A share of the right answer: 0.05 for 5 %. */
  | { readonly kind: "share"; readonly share: number }
  /** A size in a unit of the right answer's dimension. */
  | { readonly kind: "span"; readonly span: Quantity };

export type ToleranceCode = QuantityCode | "negative" | "share-of-temperature";

/**
 * Reads a tolerance for a right answer. A percentage is a share of the answer, unless the answer itself is one: then
 * it is points (80 % ± 5 % is 75 % to 85 %). Anything else is a span, a bare number one in the answer's unit.
 * A share of a temperature is refused, because it would depend on the scale.
 */
export function readTolerance(answer: Quantity, text: string): Result<Tolerance, ToleranceCode> {
  const read = readInUnitOf(answer, text);
  if (!read.ok) return read;
  const given = read.value;
  if (given.amount < 0) return bad("negative", text, t`a tolerance of 0 or more`);
  if (isShare(given) && !isShare(answer)) {
    if (answer.dimension !== "temperature") return good({ kind: "share", share: given.base });
    return bad("share-of-temperature", text, t`a span such as 2 °C`);
  }
  if (given.dimension === answer.dimension) return good({ kind: "span", span: given });
  return bad("dimension", text, t`a percentage, or ${withArticle(answer.dimension)}`);
}

/** Reads a quantity; a bare number is one in the unit of the other quantity. */
export function readInUnitOf(other: Quantity, text: string): Result<Quantity, QuantityCode> {
  const read = parseQuantity(text);
  const bare = read.ok && read.value.unit === "" && other.unit !== "";
  return bare ? parseQuantity(`${text} ${other.unit}`) : read;
}

/** The tolerance in the base unit of the answer; 0 where there is none. */
export function slack(answer: Quantity, tolerance: Tolerance | undefined): number {
  if (tolerance === undefined) return 0;
  return tolerance.kind === "span" ? spanInBase(tolerance.span) : tolerance.share * Math.abs(answer.base);
}

/** `0.9 N·m ± 5 %`. */
export function formatWithTolerance(answer: Quantity, tolerance: Tolerance | undefined): string {
  if (tolerance === undefined) return formatQuantity(answer);
  const size = tolerance.kind === "span" ? tolerance.span : { amount: tolerance.share * 100, unit: "%" };
  return `${formatQuantity(answer)} ± ${formatQuantity(size)}`;
}

function isShare({ unit }: Quantity): boolean {
  return unit === "%" || unit === "‰";
}
