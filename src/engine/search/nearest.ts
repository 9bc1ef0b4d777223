/** What was meant by a word that nothing is known under. */
import { editDistance } from "./edit-distance.ts";
import { allowsError } from "./match.ts";

/** From so many letters on two slips are forgiven. */
const longWord = 8;
/** More words than these would be a guess. */
const mostMeant = 3;

/**
 * The nearest of the known words, at most three that are equally near: one slip away, from eight letters on two. The first letter is
 * kept, or has changed places with the second. Words with figures are never mended, for M3 is not M4. O(words · length²).
 */
export function nearestWords(typed: string, known: Iterable<string>): string[] {
  if (!allowsError(typed)) return [];
  let least = typed.length < longWord ? 1 : 2;
  let meant: string[] = [];
  for (const word of known) {
    if (Math.abs(word.length - typed.length) > least || !beginsAlike(typed, word) || !allowsError(word))
      continue;
    const distance = editDistance(typed, word);
    if (distance > least) continue;
    if (distance < least) meant = [];
    least = distance;
    meant.push(word);
  }
  return [...new Set(meant)].sort().slice(0, mostMeant);
}

const beginsAlike = (typed: string, word: string): boolean =>
  typed[0] === word[0] || (typed[0] === word[1] && typed[1] === word[0]);
