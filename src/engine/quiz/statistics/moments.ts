/** Means, variances and covariances of question scores with their total, one sitting after the other. */

/**
 * Sums of squares about the means, updated by each sitting, so that a million sittings take no more memory than one and
 * lose no figures (B. P. Welford, Technometrics 4 (1962); covariances likewise). Divided by n at the end: KR-20 equals
 * alpha only where items and total have the same divisor.
 */
export class Moments {
  readonly items: number;
  #count = 0;
  readonly #mean: Float64Array;
  readonly #squares: Float64Array;
  readonly #withTotal: Float64Array;
  #totalMean = 0;
  #totalSquares = 0;

  constructor(items: number) {
    this.items = items;
    this.#mean = new Float64Array(items);
    this.#squares = new Float64Array(items);
    this.#withTotal = new Float64Array(items);
  }

  /** The score of each item in one sitting. O(items). */
  add(scores: ArrayLike<number>): void {
    this.#count++;
    let total = 0;
    for (let item = 0; item < this.items; item++) total += scores[item]!;
    const fromTotal = total - this.#totalMean;
    this.#totalMean += fromTotal / this.#count;
    this.#totalSquares += fromTotal * (total - this.#totalMean);
    for (let item = 0; item < this.items; item++) {
      const score = scores[item]!;
      const from = score - this.#mean[item]!;
      this.#mean[item]! += from / this.#count;
      this.#squares[item]! += from * (score - this.#mean[item]!);
      this.#withTotal[item]! += fromTotal * (score - this.#mean[item]!);
    }
  }

  get count(): number {
    return this.#count;
  }
  get totalMean(): number {
    return this.#totalMean;
  }
  get totalVariance(): number {
    return this.#totalSquares / this.#count;
  }
  mean(item: number): number {
    return this.#mean[item]!;
  }
  variance(item: number): number {
    return this.#squares[item]! / this.#count;
  }
  /** Of an item with the total of all items, itself included. */
  covariance(item: number): number {
    return this.#withTotal[item]! / this.#count;
  }
}
