/** Exact arithmetic with numbers of orders. */

export function factorial(n: number): bigint {
  let product = 1n;
  for (let factor = 2; factor <= n; factor++) product *= BigInt(factor);
  return product;
}

/**
 * In how many ways sequences of the given lengths can be merged: (Σ sizes)! / Π sizes!. Built up as binomials, the
 * largest size first because it then costs nothing: as many multiplications as all sizes but the largest add up to.
 */
export function multinomial(sizes: readonly number[]): bigint {
  let product = 1n;
  let total = 0;
  for (const size of sizes.toSorted((a, b) => b - a)) {
    product *= binomial(total, size);
    total += size;
  }
  return product;
}

/** In how many ways a sequence of `size`, not longer than `total` unless that is 0, is merged into one of `total`. */
function binomial(total: number, size: number): bigint {
  if (total === 0) return 1n;
  let ways = 1n;
  for (let factor = 1; factor <= size; factor++) ways = (ways * BigInt(total + factor)) / BigInt(factor);
  return ways;
}

/**
 * part / whole as the nearest number or its neighbour, for 0 < part ≤ whole of any length. Dividing them as numbers
 * would give NaN from 171! on; so the quotient is taken to 64 bits or more and scaled back. 0 only where the quotient
 * is below the least number, 2⁻¹⁰⁷⁴.
 */
export function ratio(part: bigint, whole: bigint): number {
  const shift = bitLength(whole) - bitLength(part) + 64;
  const quotient = Number((part << BigInt(shift)) / whole);
  // In two steps, since 2 ** -shift alone may be too small a number while the result is not.
  const half = Math.min(shift, 512);
  return quotient * 2 ** -half * 2 ** (half - shift);
}

/** To within 3 bits. */
function bitLength(value: bigint): number {
  return value.toString(16).length * 4;
}
