/** Words of the trade that mean the same: whoever asks by one of them is to find the others. */
import { queryWords } from "./words.ts";

/** A way in which the query could be put as well. */
export interface Variant {
  /** What of the query was put in other words, as the list writes it. */
  readonly asked: string;
  readonly instead: string;
  /** The whole query so put, cut. */
  readonly words: readonly string[];
}

/** Gives the other ways to put a query that was cut into words. O(words · words of the lists). */
export type Rephrase = (words: readonly string[]) => Variant[];

/** Of lists of names that mean the same. One name of a query is replaced at a time, the longest of its list that fits. */
export function rephraser(lists: readonly (readonly string[])[]): Rephrase {
  const cut = lists.map((names) => names.map((name) => ({ name, words: queryWords(name) })));
  return (query) =>
    cut.flatMap((names) => {
      const fits = names
        .map((one) => ({ ...one, at: placeOf(one.words, query) }))
        .filter(({ at }) => at >= 0)
        .sort((a, b) => b.words.length - a.words.length);
      const [asked] = fits;
      if (asked === undefined) return [];
      return names
        .filter(({ name }) => name !== asked.name)
        .map(({ name, words }) => ({
          ...{ asked: asked.name, instead: name },
          words: query.toSpliced(asked.at, asked.words.length, ...words),
        }));
    });
}

/** Where the words stand one behind the other; -1 where they don't. */
function placeOf(words: readonly string[], query: readonly string[]): number {
  if (words.length === 0) return -1;
  return query.findIndex((_, at) => words.every((word, i) => query[at + i] === word));
}
