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

/** The first place that answers the query best, and better than the page's title does; -1 where none does. O(words). */
export function bestPlace(title: CutPlace, places: readonly CutPlace[], query: string): number {
  const fits = queryWords(query).map(tolerant);
  const score = (place: CutPlace) => fits.reduce((sum, fits) => sum + placeFit(place, fits), 0);
  let best = -1;
  let most = score(title);
  for (const [at, place] of places.entries()) {
    const here = score(place);
    if (here > most) [best, most] = [at, here];
  }
  return best;
}

function tolerant(typed: string): Fit {
  const sure = fitWithoutError(typed);
  const unsure = fitWithOneError(typed);
  return (word) => sure(word) || unsure(word);
}

const placeFit = ({ heading, names }: CutPlace, fits: Fit): number =>
  Math.max(bestFit(heading, fits), nameWeight * bestFit(names, fits));

function bestFit(words: readonly string[], fits: Fit): number {
  let best = 0;
  for (const word of words) best = Math.max(best, fits(word));
  return best;
}
