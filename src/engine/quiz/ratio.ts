/**
 * Exact fractions. Points are added and compared with the pass mark in them, so that no rounding decides who passes:
 * 0.1 + 0.2 is 0.3 here, and two thirds is less than 66.67 %.
 */

export interface Ratio {
  readonly top: bigint;
  /** Greater than 0. */
  readonly bottom: bigint;
}

export const none: Ratio = { top: 0n, bottom: 1n };
export const whole: Ratio = { top: 1n, bottom: 1n };

/** `top` of `bottom` equal parts, both whole numbers, `bottom` greater than 0. */
export function ratio(top: number, bottom: number): Ratio {
  return reduced(BigInt(top), BigInt(bottom));
}

/**
 * The decimal that a finite number prints as, which is what its author wrote: 0.1 is one tenth, although the number
 * stored for it is not. Throws a RangeError for NaN and infinities.
 */
export function ratioOf(value: number): Ratio {
  if (Number.isSafeInteger(value)) return { top: BigInt(value), bottom: 1n };
  const match = /^(-?\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value));
  if (!match) throw new RangeError(`${value} is not a finite number`);
  const [, units = "", decimals = "", exponent = "0"] = match;
  const power = Number(exponent) - decimals.length;
  const digits = BigInt(units + decimals);
  return power < 0
    ? reduced(digits, 10n ** BigInt(-power))
    : { top: digits * 10n ** BigInt(power), bottom: 1n };
}

export function plus(a: Ratio, b: Ratio): Ratio {
  if (a.bottom === b.bottom) return reduced(a.top + b.top, a.bottom);
  return reduced(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
}

export function times(a: Ratio, b: Ratio): Ratio {
  if (a === whole || b === none) return b;
  if (b === whole || a === none) return a;
  return reduced(a.top * b.top, a.bottom * b.bottom);
}

/** a / b, with b greater than 0. */
export function over(a: Ratio, b: Ratio): Ratio {
  return reduced(a.top * b.bottom, a.bottom * b.top);
}

/** Below 0, 0 or above 0 as a is less than, equal to or greater than b. */
export function compare(a: Ratio, b: Ratio): number {
  const [left, right] = [a.top * b.bottom, b.top * a.bottom];
  return left < right ? -1 : left > right ? 1 : 0;
}

/** The nearest number where both parts are below 2^53, else a near one: for showing, never for comparing. */
export function toNumber({ top, bottom }: Ratio): number {
  if (bottom === 1n) return Number(top);
  const excess = Math.max(0, bottom.toString(2).length - 1000);
  return Number(top >> BigInt(excess)) / Number(bottom >> BigInt(excess));
}

function reduced(top: bigint, bottom: bigint): Ratio {
  if (bottom === 1n) return { top, bottom };
  const divisor = greatestCommonDivisor(top < 0n ? -top : top, bottom);
  return { top: top / divisor, bottom: bottom / divisor };
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b];
  while (smaller > 0n) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}
