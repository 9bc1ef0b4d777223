/** Means, variances and covariances of many pairs of figures, one pair of values after the other. */

/**
 * For each of `pairs` places, the sums of squares and products about the means of all values that were added there, updated by
 * each (B. P. Welford, Technometrics 4 (1962)): a million take no more memory than one, and lose no figures.
 */
export class PairedMoments {
  readonly #count: Float64Array;
  readonly #meanA: Float64Array;
  readonly #meanB: Float64Array;
  readonly #squaresA: Float64Array;
  readonly #squaresB: Float64Array;
  readonly #products: Float64Array;

  constructor(pairs: number) {
    this.#count = new Float64Array(pairs);
    this.#meanA = new Float64Array(pairs);
    this.#meanB = new Float64Array(pairs);
    this.#squaresA = new Float64Array(pairs);
    this.#squaresB = new Float64Array(pairs);
    this.#products = new Float64Array(pairs);
  }

  /** O(1). */
  add(pair: number, a: number, b: number): void {
    const count = this.#count[pair]! + 1;
    const [fromA, fromB] = [a - this.#meanA[pair]!, b - this.#meanB[pair]!];
    this.#count[pair] = count;
    this.#meanA[pair]! += fromA / count;
    this.#meanB[pair]! += fromB / count;
    const nowB = b - this.#meanB[pair]!;
    this.#squaresA[pair]! += fromA * (a - this.#meanA[pair]!);
    this.#squaresB[pair]! += fromB * nowB;
    this.#products[pair]! += fromA * nowB;
  }

  count(pair: number): number {
    return this.#count[pair]!;
  }

  /** Of the first figures; 0 where none was added. */
  mean(pair: number): number {
    return this.#meanA[pair]!;
  }

  /** Of the first figures, divided by n − 1; undefined for fewer than two. */
  variance(pair: number): number | undefined {
    const count = this.#count[pair]!;
    return count < 2 ? undefined : this.#squaresA[pair]! / (count - 1);
  }

  /** Divided by n − 1; undefined for fewer than two. */
  covariance(pair: number): number | undefined {
    const count = this.#count[pair]!;
    return count < 2 ? undefined : this.#products[pair]! / (count - 1);
  }

  /** Null where either never varies. */
  correlation(pair: number): number | null {
    const count = this.#count[pair]!;
    const [a, b] = [this.#squaresA[pair]!, this.#squaresB[pair]!];
    if (a <= rounding * count || b <= rounding * count) return null;
    return Math.max(-1, Math.min(1, this.#products[pair]! / Math.sqrt(a * b)));
  }
}

/** A variance below this is what rounding has left of none. */
const rounding = 1e-12;
