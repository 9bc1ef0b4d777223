/** Which options people take, and how well those do at the other questions who take them. */

export interface OptionCount {
  readonly taken: number;
  /** Mean share of the points of all other questions earned by those who took it; null where nobody did. */
  readonly restMean: number | null;
}

/** Counts for the options of one question. */
export class OptionTally {
  readonly #taken: number[];
  readonly #rest: number[];

  constructor(options: number) {
    this.#taken = new Array<number>(options).fill(0);
    this.#rest = new Array<number>(options).fill(0);
  }

  /** `rest` is the share of the points of all other questions that this person earned. */
  add(places: Iterable<number>, rest: number): void {
    for (const place of places) {
      this.#taken[place]! += 1;
      this.#rest[place]! += rest;
    }
  }

  counts(): OptionCount[] {
    return this.#taken.map((taken, place) => ({
      taken,
      restMean: taken === 0 ? null : this.#rest[place]! / taken,
    }));
  }
}
