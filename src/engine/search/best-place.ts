/** Chooses the place on a page that answers a query best. */
import { type Fit, fitWithOneError, fitWithoutError } from "./match.ts";
import { queryWords } from "./words.ts";

/** The words of a title or heading, and of the names that belong there. */
export interface CutPlace {
  readonly heading: readonly string[];
  /** Of each name its words. */
  readonly names: readonly (readonly string[])[];
  /** A row of a list: what it says is its heading. */
  readonly isRow?: boolean;
}

/** A name says less about a place than its heading does, and where a step is headed by it one reads more than in a row. */
const nameWeight = 0.4;
const rowWeight = 0.9;

/** Gives, of the places on a page, the first that answers best, and better than the page's title does; -1 for none. */
export type PlaceFinder = (title: CutPlace, places: readonly CutPlace[]) => number;

/** Which names of a place, best first, answer what neither its heading nor the title of its page does. */
export type NamesFinder = (title: CutPlace, place: CutPlace) => number[];

/** For one query. O(words) for each page; a word met again costs one look-up. */
export function findersFor(query: string): { bestPlace: PlaceFinder; namesAt: NamesFinder } {
  return findersForWords(queryWords(query).map((word) => [word]));
}

/** For a query that was cut: each word with those that are meant by it, of which the best fit counts. */
export function findersForWords(meant: readonly (readonly string[])[]): {
  bestPlace: PlaceFinder;
  namesAt: NamesFinder;
} {
  const fits = meant.map(anyOf);
  return { bestPlace: placeFinder(fits), namesAt: namesFinder(fits) };
}

function placeFinder(fits: readonly Fit[]): PlaceFinder {
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

function anyOf(words: readonly string[]): Fit {
  const fits = words.map(tolerant);
  return (word) => bestOf(fits, word);
}

function bestOf(fits: readonly Fit[], word: string): number {
  let best = 0;
  for (const one of fits) best = Math.max(best, one(word));
  return best;
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

const placeFit = ({ heading, names, isRow }: CutPlace, fits: Fit): number => {
  let best = bestFit(heading, fits) * (isRow ? rowWeight : 1);
  for (const name of names) best = Math.max(best, nameWeight * bestFit(name, fits));
  return best;
};

/** At most so many names are given for what was found. */
const mostNames = 3;

/** Without these nobody would see why the place was found. */
function namesFinder(fits: readonly Fit[]): NamesFinder {
  return (title, place) => {
    const open = fits.filter((fits) => bestFit(title.heading, fits) + bestFit(place.heading, fits) === 0);
    const scores = place.names.map((name) => open.reduce((sum, fits) => sum + bestFit(name, fits), 0));
    return [...scores.keys()]
      .filter((at) => scores[at]! > 0)
      .sort((a, b) => scores[b]! - scores[a]! || a - b)
      .slice(0, mostNames);
  };
}

function bestFit(words: readonly string[], fits: Fit): number {
  let best = 0;
  for (const word of words) best = Math.max(best, fits(word));
  return best;
}
