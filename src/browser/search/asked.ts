/** What a query asks for: as it was typed, mended, and in other words of the trade. */
import type lunr from "lunr";
import { nearestWords } from "../../engine/search/nearest.ts";
import { rephraser } from "../../engine/search/synonyms.ts";
import { queryWords } from "../../engine/search/words.ts";
import { isKnown } from "./find.ts";

/** A word that nothing is known under, and those that may have been meant. */
export interface Mended {
  readonly typed: string;
  readonly meant: readonly string[];
}

export interface Asked {
  /** The query as it was typed, then in other words; each of its words may stand for several. */
  readonly ways: readonly (readonly (readonly string[])[])[];
  readonly mended: readonly Mended[];
  /** Names that were put into other words. */
  readonly others: readonly { readonly asked: string; readonly instead: string }[];
}

/** Gives what cuts and mends a query; `isSaid` tells whether a word is known from prose. O(known words) for a slip. */
export function asker(
  index: lunr.Index,
  known: readonly string[],
  sameMeaning: readonly (readonly string[])[],
): (query: string, isSaid: (word: string) => boolean) => Asked {
  const rephrase = rephraser(sameMeaning);
  const ofTheTrade = new Set(sameMeaning.flat().flatMap(queryWords));
  const dictionary = [...known, ...ofTheTrade];
  const slips = new Map<string, readonly string[]>();
  const nearest = (typed: string): readonly string[] => {
    const meant = slips.get(typed) ?? nearestWords(typed, dictionary);
    slips.set(typed, meant);
    return meant;
  };
  return (query, isSaid) => {
    const typed = [...new Set(queryWords(query))];
    const isRight = (word: string) => ofTheTrade.has(word) || isKnown(index, word) || isSaid(word);
    const meant = typed.map((word) => (isRight(word) ? [] : nearest(word)));
    const words = typed.map((word, at) => (meant[at]!.length === 0 ? [word] : meant[at]!));
    const others = rephrase(words.map(([first]) => first!));
    return {
      ways: [words, ...others.map((other) => other.words.map((word) => [word]))],
      mended: typed
        .map((word, at) => ({ typed: word, meant: meant[at]! }))
        .filter((one) => one.meant.length > 0),
      others,
    };
  };
}
