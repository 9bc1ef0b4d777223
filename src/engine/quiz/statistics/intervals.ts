/** Confidence intervals of shares and correlations. */

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The 97.5 % point of the normal distribution, for intervals of 95 %. */
const z = 1.959963984540054;

/**
 * The 95 % score interval of a share of `hits` among `n`, n > 0.
 * E. B. Wilson, J. Am. Stat. Assoc. 22 (1927); method 3 of R. G. Newcombe, Stat. Med. 17 (1998).
 */
export function wilson(hits: number, n: number): Interval {
  const share = hits / n;
  const middle = share + (z * z) / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const bottom = 1 + (z * z) / n;
  return { low: Math.max(0, (middle - half) / bottom), high: Math.min(1, (middle + half) / bottom) };
}

/**
 * The 95 % interval of a correlation of `n` pairs by Fisher's transformation (R. A. Fisher, Metron 1 (1921)); undefined
 * for fewer than four pairs.
 */
export function ofCorrelation(r: number, n: number): Interval | undefined {
  if (n < 4) return undefined;
  const half = z / Math.sqrt(n - 3);
  const middle = Math.atanh(Math.max(-1 + 1e-15, Math.min(1 - 1e-15, r)));
  return { low: Math.tanh(middle - half), high: Math.tanh(middle + half) };
}
