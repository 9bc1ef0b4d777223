/** What someone earns who knows nothing and guesses: every answer that the page lets them give, equally likely. */
import type { Ratio } from "./ratio.ts";

/** How many of the equally likely answers earn this. */
export interface Guess {
  readonly credit: Ratio;
  /** The answer fails the question as a critical one, whatever it earns. */
  readonly failsCritical: boolean;
  readonly ways: bigint;
}

/** Answers counted by what they earn. */
export function tally(guesses: Iterable<Guess>): Guess[] {
  const counted = new Map<string, Guess>();
  for (const { credit, failsCritical, ways } of guesses) {
    const key = `${credit.top}/${credit.bottom} ${failsCritical}`;
    counted.set(key, { credit, failsCritical, ways: ways + (counted.get(key)?.ways ?? 0n) });
  }
  return [...counted.values()];
}

/** n! / (k! (n − k)!). O(k). */
export function choose(n: number, k: number): bigint {
  let ways = 1n;
  for (let i = 1; i <= k; i++) ways = (ways * BigInt(n - k + i)) / BigInt(i);
  return ways;
}
