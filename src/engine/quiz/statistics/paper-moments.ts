/** What the statistics of questions need of sittings that ask different ones of a pool. */
import { PairedMoments } from "./paired-moments.ts";

/**
 * Takes one sitting after the other; memory grows with the square of the questions, not with the sittings. A question that a
 * sitting did not ask has NaN for a score there, and counts neither as right nor as missed.
 */
export class PaperMoments {
  readonly max: ArrayLike<number>;
  #count = 0;
  #asked = 0;
  #mean = 0;
  #squares = 0;
  /** By question: its points against the share earned of the whole paper, and of the rest of it. */
  readonly #withPaper: PairedMoments;
  readonly #withRest: PairedMoments;
  /** By pair of questions: the points of those who were asked both. */
  readonly #together: PairedMoments;
  /** The places of the questions that this sitting asked. */
  readonly #places: Int32Array;

  /** `max`: the most that each question can score, greater than 0. */
  constructor(max: ArrayLike<number>) {
    this.max = max;
    const items = max.length;
    this.#withPaper = new PairedMoments(items);
    this.#withRest = new PairedMoments(items);
    this.#together = new PairedMoments((items * (items - 1)) / 2);
    this.#places = new Int32Array(items);
  }

  /** The score of each question, NaN where it was not asked. O(questions + asked²). */
  add(scores: ArrayLike<number>): void {
    const places = this.#places;
    let [asked, total, most] = [0, 0, 0];
    for (let item = 0; item < this.max.length; item++) {
      const score = scores[item]!;
      if (Number.isNaN(score)) continue;
      places[asked++] = item;
      total += score;
      most += this.max[item]!;
    }
    if (asked === 0) return;
    this.#addTotal(total, asked);
    for (let at = 0; at < asked; at++) this.#addItem(places[at]!, scores, total, most);
    for (let first = 1; first < asked; first++)
      for (let second = 0; second < first; second++) {
        const [i, j] = [places[first]!, places[second]!];
        this.#together.add(pairOf(i, j), scores[i]!, scores[j]!);
      }
  }

  #addTotal(total: number, asked: number): void {
    this.#count++;
    this.#asked += asked;
    const from = total - this.#mean;
    this.#mean += from / this.#count;
    this.#squares += from * (total - this.#mean);
  }

  /** Where the paper asks nothing else, there is no rest to hold it against. */
  #addItem(item: number, scores: ArrayLike<number>, total: number, most: number): void {
    const [score, max] = [scores[item]!, this.max[item]!];
    this.#withPaper.add(item, score, total / most);
    if (most > max) this.#withRest.add(item, score, (total - score) / (most - max));
  }

  /** Sittings that asked anything. */
  get count(): number {
    return this.#count;
  }
  /** Questions that a sitting asks, on the average. */
  get length(): number {
    return this.#asked / this.#count;
  }
  /** Of the points earned on the own paper. */
  get totalMean(): number {
    return this.#mean;
  }
  /** Likewise, divided by n. */
  get totalVariance(): number {
    return this.#squares / this.#count;
  }
  asked(item: number): number {
    return this.#withPaper.count(item);
  }
  mean(item: number): number {
    return this.#withPaper.mean(item);
  }
  /** Over all who were asked it, divided by n − 1; undefined for fewer than two. */
  variance(item: number): number | undefined {
    return this.#withPaper.variance(item);
  }
  /** Over all who were asked both, divided by n − 1; undefined for fewer than two. */
  covariance(a: number, b: number): number | undefined {
    return this.#together.covariance(a > b ? pairOf(a, b) : pairOf(b, a));
  }
  /** With the share earned of the whole paper, the question itself included. */
  itemTotal(item: number): number | null {
    return this.#withPaper.correlation(item);
  }
  /** With the share earned of the rest of the paper, and how many papers had one. */
  itemRest(item: number): { readonly correlation: number | null; readonly count: number } {
    return { correlation: this.#withRest.correlation(item), count: this.#withRest.count(item) };
  }
}

/** The place of a pair in a triangle that is kept row by row; `larger` is greater than `smaller`. */
const pairOf = (larger: number, smaller: number): number => (larger * (larger - 1)) / 2 + smaller;
