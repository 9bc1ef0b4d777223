/** Numbers as people write them at the head of a text. */

import { t } from "../words.ts";
import { bad, good, type Result } from "./result.ts";

export type NumeralCode = "empty" | "digits" | "number" | "ambiguous-number" | "too-large" | "too-small";

export interface Numeral {
  readonly amount: number;
  /** What follows the number, trimmed. */
  readonly rest: string;
}

interface Form {
  readonly pattern: RegExp;
  read(match: RegExpMatchArray): Result<number, NumeralCode>;
}

/** The first form that fits the head of the text reads it. */
const forms: readonly Form[] = [
  {
    pattern: /^(\d+)(?:\s+|-)(\d+)\s*[/⁄]\s*(\d+)/,
    read: ([text, whole, top, bottom]) => mixed(text, Number(whole), Number(top), Number(bottom)),
  },
  {
    pattern: /^(\d+)\s*[/⁄]\s*(\d+)/,
    read: ([text, top, bottom]) => fraction(text, Number(top), Number(bottom)),
  },
  { pattern: /^(?:\d+(?:\.\d*|,\d+)?|[.,]\d+)(?:e[+-]?\d+)?/i, read: ([text]) => decimal(text) },
];

const aNumber = t`a number such as 0.9, 5/16 or 1 1/4`;

/**
 * Reads the number that a text begins with: `0.9`, `.5`, `1e3`, `5/16`, `1 1/4`, `1-1/4`, `½`, `1½`, signed or not.
 *
 * A single comma is a decimal comma (`1,5` is 1.5). Where it could as well part thousands, because one to three digits
 * that are not all zero stand before it and exactly three after (`1,234`), it is refused. Thousands are not parted
 * otherwise: `1 234`, `1,234,567` and `1,234.5` are refused. A point is always a decimal point. Digits are 0 to 9 only.
 * Infinities and what rounds to infinity or to zero (`1e999`, `1e-999`) are refused.
 */
export function readNumeral(text: string): Result<Numeral, NumeralCode> {
  const plain = spellFractions(text).trim();
  const sign = /^[+\-−]\s*/.exec(plain)?.[0] ?? "";
  const unsigned = plain.slice(sign.length);
  if (unsigned === "") return bad("empty", text.trim() === "" ? t`nothing` : text.trim(), aNumber);
  if (/(?![0-9])\p{Nd}/u.test(unsigned)) return bad("digits", text, t`the digits 0 to 9`);
  for (const { pattern, read } of forms) {
    const match = pattern.exec(unsigned);
    if (match) return withRest(match, read, /^[-−]/.test(sign), unsigned);
  }
  return bad("number", text, aNumber);
}

/** What follows is looked at first: it may show that the number does not end where it seems to. */
function withRest(
  match: RegExpMatchArray,
  read: Form["read"],
  negative: boolean,
  unsigned: string,
): Result<Numeral, NumeralCode> {
  const after = unsigned.slice(match[0].length);
  if (/^\s*[-–—]\s*\d/.test(after)) return bad("number", unsigned, t`one quantity, not a range`);
  if (/^\s*[\d.,/⁄]/.test(after)) return bad("number", unsigned, t`one number, its thousands not parted`);
  const amount = read(match);
  if (!amount.ok) return amount;
  return good({ amount: negative ? 0 - amount.value : amount.value, rest: after.trim() });
}

function mixed(text: string, whole: number, top: number, bottom: number): Result<number, NumeralCode> {
  if (top >= bottom) return bad("number", text, t`a proper fraction after the whole number, as in 1 1/4`);
  return finite(text, whole + top / bottom, true);
}

function fraction(text: string, top: number, bottom: number): Result<number, NumeralCode> {
  if (bottom === 0) return bad("number", text, t`a fraction whose lower number is not 0`);
  return finite(text, top / bottom, top > 0);
}

function decimal(text: string): Result<number, NumeralCode> {
  if (/^(?!0+,)\d{1,3},\d{3}(?:e|$)/i.test(text)) {
    const [thousands, point] = [text.replace(",", ""), text.replace(",", ".")];
    return bad("ambiguous-number", text, t`${thousands} or ${point}, without a comma`);
  }
  return finite(text, Number(text.replace(",", ".")), /[1-9]/.test(text.replace(/e.*/i, "")));
}

function finite(text: string, value: number, nonZero: boolean): Result<number, NumeralCode> {
  if (!Number.isFinite(value)) return bad("too-large", text, t`a number that can be reckoned with`);
  if (nonZero && value === 0) return bad("too-small", text, t`a number that can be told from 0`);
  return good(value);
}

/** `1½` becomes `1 1/2`: the compatibility form alone would read eleven halves. */
export function spellFractions(text: string): string {
  return text.replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKC").replace("⁄", "/")}`);
}
