/** Where in a text the words stand by which it was found. */
import type { Fit } from "./match.ts";
import { fitWithoutError } from "./match.ts";
import { tellsApart } from "./prose.ts";
import { indexWords, queryWords } from "./words.ts";

/** A piece of a text, and whether it is one of the words. */
export type Piece = readonly [text: string, isFound: boolean];

/** For the words of a query. */
export interface Marker {
  /** The text in pieces, together the whole of it. O(length). */
  pieces(text: string): Piece[];
  /** The first sentence that has most of the words; undefined where none has any. O(length). */
  sentence(texts: readonly string[]): string | undefined;
}

export function markerFor(words: readonly string[]): Marker {
  const fits = [...new Set(words)].filter(tellsApart).map((word) => fitWithoutError(word));
  const count = (text: string) => {
    const here = indexWords(text);
    return fits.filter((one) => here.some((word) => one(word) > 0)).length;
  };
  return {
    pieces: (text) => pieces(text, fits),
    sentence: (texts) => {
      let best: string | undefined;
      let most = 0;
      for (const sentence of texts.flatMap(sentencesOf)) {
        const here = count(sentence);
        if (here > most) [best, most] = [sentence, here];
      }
      return best;
    },
  };
}

/** Cut behind a full stop before a capital, so that "approx. 2 mm" stays whole. */
export const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?][)"”’]?)\s+(?=[\p{Lu}(“"])/u);

const wordPattern = /[\p{L}\p{N}#.][\p{L}\p{N}\p{M}./'’×,-]*/gu;

/** The name of a thread may be three words long: "M3 x 0.5". */
const longestName = 3;

function pieces(text: string, fits: readonly Fit[]): Piece[] {
  const places = [...text.matchAll(wordPattern)].map(
    (match) => [match.index, match.index + match[0].length] as const,
  );
  const found: Piece[] = [];
  let done = 0;
  for (let at = 0; at < places.length; ) {
    const taken = lengthFound(text, places.slice(at, at + longestName), fits);
    if (taken > 0) {
      const [begin, end] = [places[at]![0], places[at + taken - 1]![1]];
      const shown = text.slice(begin, end).replace(/[.,]+$/, "");
      found.push([text.slice(done, begin), false], [shown, true]);
      done = begin + shown.length;
    }
    at += Math.max(1, taken);
  }
  return [...found, [text.slice(done), false] as const].filter(([piece]) => piece !== "");
}

/** How many of the next words are one that was asked for: several only where together they are one name. */
function lengthFound(
  text: string,
  places: readonly (readonly [begin: number, end: number])[],
  fits: readonly Fit[],
): number {
  const isAsked = (word: string) => fits.some((one) => one(word) > 0);
  const saysNothing = ([begin, end]: readonly [number, number]) =>
    queryWords(text.slice(begin, end)).length === 0;
  if (saysNothing(places[0]!)) return 0;
  for (let length = places.length; length > 1; length--) {
    if (saysNothing(places[length - 1]!)) continue;
    const together = queryWords(text.slice(places[0]![0], places[length - 1]![1]));
    if (together.length === 1 && isAsked(together[0]!)) return length;
  }
  const [begin, end] = places[0]!;
  return indexWords(text.slice(begin, end)).some(isAsked) ? 1 : 0;
}
