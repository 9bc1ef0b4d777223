/** Chooses the place on a page that answers a query best. */
import { type Fit, fitWithOneError, fitWithoutError } from "./match.ts";
import { queryWords } from "./words.ts";

/** The words of a title or heading, and of the names that belong there. */
export interface CutPlace {
  readonly heading: readonly string[];
  readonly names: readonly string[];
}

/** A name says less about a place than its heading does. */
const nameWeight = 0.4;

/** Gives, of the places on a page, the first that answers best, and better than the page's title does; -1 for none. */
export type PlaceFinder = (title: CutPlace, places: readonly CutPlace[]) => number;

/** O(words) for each page; a word met again costs one look-up. */
export function placeFinder(query: string): PlaceFinder {
  const fits = queryWords(query).map(tolerant);
  const score = (place: CutPlace) => fits.reduce((sum, fits) => sum + placeFit(place, fits), 0);
  return (title, places) => {
    let best = -1;
    let most = score(title);
    for (const [at, place] of places.entries()) {
      const here = score(place);
      if (here > most) [best, most] = [at, here];
    }
    return best;
  };
}

function tolerant(typed: string): Fit {
  const sure = fitWithoutError(typed);
  const unsure = fitWithOneError(typed);
  const known = new Map<string, number>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const value = sure(word) || unsure(word);
    known.set(word, value);
    return value;
  };
}

const placeFit = ({ heading, names }: CutPlace, fits: Fit): number =>
  Math.max(bestFit(heading, fits), nameWeight * bestFit(names, fits));

function bestFit(words: readonly string[], fits: Fit): number {
  let best = 0;
  for (const word of words) best = Math.max(best, fits(word));
  return best;
}
