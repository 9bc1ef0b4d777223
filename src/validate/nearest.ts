import { editDistance } from "../engine/search/edit-distance.ts";

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
