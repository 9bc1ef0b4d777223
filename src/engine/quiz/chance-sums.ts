/** Sums of what questions earn, each with the number of ways in which it comes out. */

/** In how many ways a sum comes out: without a failed critical question, and with one. */
export interface Ways {
  readonly sound: bigint;
  readonly failed: bigint;
}

/** By `earned · span + most`, the points earned and the most that could have been, in whole units. */
export type Sums = ReadonlyMap<bigint, Ways>;

/** A question's guesses, its points in the same units; `ways` of all add up to the same in each question of a pool. */
export interface Counted {
  readonly guesses: readonly { readonly key: bigint; readonly failed: boolean; readonly ways: bigint }[];
}

/** One sum, of nothing, in one way. */
export const nothing: Sums = new Map([[0n, { sound: 1n, failed: 0n }]]);

/** Sums beyond this many make the answer too long to wait for. */
const mostSums = 100_000;

/**
 * Adds what is earned by exactly `count` questions of the pool, over all choices of them: question by question, those that
 * leave it out beside those that take it in. Undefined where more than 100,000 different sums stand at once.
 * O(pool · count · sums · guesses of a question).
 */
export function withSomeOf(before: Sums, pool: readonly Counted[], count: number): Sums | undefined {
  // By how many questions were taken so far.
  let taken = new Map<number, Sums>([[0, before]]);
  for (const [at, question] of pool.entries()) {
    const left = pool.length - at - 1;
    const next = new Map<number, Sums>();
    for (let many = Math.max(0, count - left); many <= Math.min(count, at + 1); many++) {
      const without = taken.get(many);
      const fewer = taken.get(many - 1);
      const sums = new Map(without ?? []);
      if (fewer !== undefined) addWith(sums, fewer, question);
      next.set(many, sums);
    }
    taken = next;
    if ([...taken.values()].reduce((all, { size }) => all + size, 0) > mostSums) return undefined;
  }
  return taken.get(count);
}

function addWith(sums: Map<bigint, Ways>, before: Sums, { guesses }: Counted): void {
  for (const [sum, { sound, failed }] of before) {
    for (const guess of guesses) {
      const key = sum + guess.key;
      const was = sums.get(key) ?? { sound: 0n, failed: 0n };
      sums.set(key, {
        sound: was.sound + (guess.failed ? 0n : sound * guess.ways),
        failed: was.failed + (failed + (guess.failed ? sound : 0n)) * guess.ways,
      });
    }
  }
}
