/** The best split of stretches into sessions, by dynamic programming from the end. */
import type { Stretch } from "./stretches.ts";

/** The sessions from one place on: the first of them, and the way on from where it ends. */
export interface Way {
  /** Places of the first and last stretch of the session. */
  readonly from: number;
  readonly to: number;
  readonly seconds: number;
  /** How many sessions there are from here on, and the sum of the squares of the seconds left over in them. */
  readonly sessions: number;
  readonly squares: number;
  readonly next: Way | undefined;
}

/**
 * The split of all stretches into sessions of at most `length` seconds: the fewest sessions; of these the least sum of
 * squared time left over, that of the last session too; of these the longer sessions first, compared one by one; of these
 * the one with more stretches in the earlier session. A wait between two stretches costs its time inside a session and
 * nothing between two. Expects at least one stretch, none longer than `length`.
 *
 * Every rest of a best split is a best split of what is left (R. Bellman, Dynamic Programming, 1957): the first two measures
 * add up, and the third compares from the front. O(stretches²): two splits that tie in both sums are compared session by
 * session until they differ or are the same from there on. Exact as long as length² · sessions stays below 2⁵³: a week,
 * 5,000 times over.
 */
export function bestSplit(stretches: readonly Stretch[], length: number): Way {
  const ways: (Way | undefined)[] = new Array(stretches.length + 1);
  for (let from = stretches.length - 1; from >= 0; from--)
    ways[from] = bestFrom(from, stretches, length, ways);
  return ways[0]!;
}

/** The longest session first: a shorter one never leaves fewer sessions to do, so the search ends where it leaves more. */
function bestFrom(
  from: number,
  stretches: readonly Stretch[],
  length: number,
  ways: readonly (Way | undefined)[],
): Way | undefined {
  let best: Way | undefined;
  let { to, seconds } = longestFrom(from, stretches, length);
  for (; to >= from; to--) {
    const next = ways[to + 1];
    const sessions = 1 + (next?.sessions ?? 0);
    if (best !== undefined && sessions > best.sessions) break;
    const squares = (length - seconds) ** 2 + (next?.squares ?? 0);
    if (best === undefined || squares <= best.squares) {
      const way: Way = { from, to, seconds, sessions, squares, next };
      if (best === undefined || isBetter(way, best)) best = way;
    }
    seconds -= stretches[to]!.seconds + (stretches[to - 1]?.wait ?? 0);
  }
  return best;
}

/** The last stretch that the session can hold, and how long it then is. */
function longestFrom(from: number, stretches: readonly Stretch[], length: number) {
  let to = from;
  let seconds = stretches[from]!.seconds;
  for (; to + 1 < stretches.length; to++) {
    const longer = seconds + stretches[to]!.wait + stretches[to + 1]!.seconds;
    if (longer > length) break;
    seconds = longer;
  }
  return { to, seconds };
}

/** True where `a`, of as many sessions, is better than `b`; false where they are alike. */
function isBetter(a: Way, b: Way): boolean {
  if (a.squares !== b.squares) return a.squares < b.squares;
  let [one, other]: [Way | undefined, Way | undefined] = [a, b];
  while (one !== undefined && other !== undefined && one !== other) {
    if (one.seconds !== other.seconds) return one.seconds > other.seconds;
    [one, other] = [one.next, other.next];
  }
  return false;
}
