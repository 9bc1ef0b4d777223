import { inLanguage } from "../words.ts";
import type { Quantity } from "./quantity.ts";

/** Units that stand against the number (NIST SP 811, 7.2: those of plane angle written as a raised sign). */
const closeUp: ReadonlySet<string> = new Set(["°"]);

/**
 * A quantity in words, such as `0.9039 N·m`: four significant figures unless told otherwise, no zeros at the end,
 * and no figure before the point rounded away. `parseQuantity` reads it again.
 */
export function formatQuantity({ amount, unit }: Pick<Quantity, "amount" | "unit">, figures = 4): string {
  const number = formatNumber(amount, figures);
  if (unit === "") return number;
  return closeUp.has(unit) ? `${number}${unit}` : `${number} ${unit}`;
}

/** A number with so many significant figures, as `formatQuantity` prints it. */
export function formatNumber(amount: number, figures = 4): string {
  const whole = Math.abs(amount) >= 10 ** figures && Math.abs(amount) < 1e15;
  const rounded = whole ? Math.round(amount) : Number(amount.toPrecision(figures));
  return inLanguage(String(rounded === 0 ? 0 : rounded))
    .replace("-", "−")
    .replace("e−", "e-")
    .replace("e+", "e");
}
