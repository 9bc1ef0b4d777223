/**
 * The known word nearest to one that is not known; undefined where more than about a third of the letters differ.
 * O(known · length²).
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.ceil(word.length / 3) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.slice(0, 80), candidate);
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

/** "; the nearest known is x", or nothing. */
export function nearestWords(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return nearestPhrase(found === undefined ? undefined : `"${found}"`);
}

/** The same where the nearest has been found already; written as it stands. */
export const nearestPhrase = (found: string | undefined): string =>
  found === undefined ? "" : `; the nearest known is ${found}`;

/** Letters put in, left out, replaced, or two neighbours swapped (optimal string alignment; F. J. Damerau, CACM 7, 1964). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          last[j - 1]! + (same ? 0 : 1),
          last[j]! + 1,
          row[j - 1]! + 1,
          swapped ? beforeLast[j - 2]! + 1 : Infinity,
        ),
      );
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}
