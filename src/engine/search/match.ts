/** How well a typed word fits a word of the index. */
import { seriesNames } from "./compounds.ts";

/** How well a word fits what was typed: 1 for the word itself, 0 for no fit. O(length). */
export type Fit = (word: string) => number;

/** Fits words that begin with what was typed and, less well, those that share its stem. */
export function fitWithoutError(typed: string): Fit {
  if (isWhole(typed)) return (word) => (word === typed ? 1 : 0);
  const stem = stemOf(typed);
  return (word) => {
    if (word.startsWith(typed)) return typed.length === word.length ? 1 : beginning(typed, word);
    return word.startsWith(stem) ? 0.4 : 0;
  };
}

/** One or two letters begin too many words to mean any of them, and a series of threads is no beginning. */
export const isWhole = (typed: string): boolean =>
  (typed.length < 3 && !hasDigit(typed)) || seriesNames.has(typed);

/** Short words and those with digits in them allow no typing error, for M3 is not M4. */
export const allowsError = (typed: string): boolean => typed.length >= 4 && !hasDigit(typed);

/** Fits words that begin with what was meant, if one typing error was made. */
export function fitWithOneError(typed: string): Fit {
  if (!allowsError(typed)) return () => 0;
  return (word) => (beginsWithOneError(typed, word) ? 0.3 : 0);
}

const hasDigit = (word: string): boolean => /\p{N}/u.test(word);

/** A single figure begins too many words to mean any of them. */
const beginning = (typed: string, word: string): number =>
  typed.length < 2 ? 0 : 0.5 + (0.3 * typed.length) / word.length;

const endings = /(?:ings?|ers?|ies|ied|ed|es|s|y|e)$/;

/** What English endings leave: "oil" of "oiling" and "oiled". Never fewer than three letters, and never of a number. */
export function stemOf(typed: string): string {
  const stem = typed.replace(endings, "");
  return stem.length >= 3 && !hasDigit(typed) ? stem : typed;
}

/** True where one letter wrong, missing, extra or exchanged with the next makes `typed` the beginning of `word`. */
export function beginsWithOneError(typed: string, word: string): boolean {
  let same = 0;
  while (same < typed.length && typed[same] === word[same]) same++;
  const rest = typed.slice(same + 1);
  const begins = (at: number, part: string) => word.startsWith(part, at);
  return (
    begins(same + 1, rest) ||
    begins(same, rest) ||
    begins(same + 1, typed.slice(same)) ||
    (typed[same] === word[same + 1] &&
      typed[same + 1] === word[same] &&
      begins(same + 2, typed.slice(same + 2)))
  );
}
