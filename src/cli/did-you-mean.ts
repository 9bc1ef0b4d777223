import { nearest } from "../validate/nearest.ts";

/** " Did you mean x?", of a word that names nothing and the words that do; or nothing. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return found === undefined ? "" : ` Did you mean ${found}?`;
}
