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

/** So many names can be taken in at a glance. */
const mostListed = 12;

/** "; the nearest known is x"; where none is near, and they are few, all of them; else nothing. */
export function nearestWords(word: string, known: Iterable<string>): string {
  const all = [...known];
  const found = nearest(word, all);
  if (found !== undefined) return nearestPhrase(`"${found}"`);
  return all.length === 0 || all.length > mostListed ? "" : `; known: ${all.join(", ")}`;
}

/** The same where the nearest has been found already; written as it stands. */
export const nearestPhrase = (found: string | undefined): string =>
  found === undefined ? "" : `; the nearest known is ${found}`;
