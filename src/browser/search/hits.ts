/** What the search shows: pages, and the best place on each. */
import { type CutPlace, findersFor } from "../../engine/search/best-place.ts";
import { indexWords } from "../../engine/search/words.ts";
import type { PageKind } from "../../model/address.ts";
import type { SearchData, SearchPage } from "../../model/search-data.ts";
import { find } from "./find.ts";
import { loadIndex } from "./load-index.ts";

export interface Hit {
  /** Relative to the site, with the place on the page. */
  readonly href: string;
  readonly title: string;
  readonly kind: PageKind;
  /** The heading of the best place on the page, or what its row says; "" where it is the page itself. */
  readonly heading: string;
  /** It is a row of the parts list. */
  readonly isRow: boolean;
  /** What stands there that was asked for and is in neither heading nor title. */
  readonly found: readonly string[];
}

export interface Hits {
  /** How many pages were found in all. */
  readonly total: number;
  /** The best of them. */
  readonly shown: readonly Hit[];
}

/** As many as fit on two screens of a phone. */
const most = 20;

/** A place as it is shown, with its words cut. */
interface Place extends CutPlace {
  readonly shown: string;
  readonly at: string;
  readonly says: readonly number[];
}

/** Gives a search over the data; words are cut once a page and kept, for the next letter asks for the same pages. */
export function searcher(data: SearchData): (query: string) => Hits {
  const index = loadIndex(data.index);
  const names = data.names.map(indexWords);
  const cut = new Map<number, readonly Place[]>();
  const placesOn = (page: number): readonly Place[] => {
    const made = cut.get(page) ?? placesOf(data.pages[page]!, data.names, names);
    cut.set(page, made);
    return made;
  };
  return (query) => {
    const found = find(index, query);
    const { bestPlace, namesAt } = findersFor(query);
    const best = found.slice(0, most).map(({ page }) => {
      const [title, ...places] = placesOn(page);
      const place = places[bestPlace(title!, places)] ?? title!;
      return hitOf(data, page, place, namesAt(title!, place));
    });
    return { total: found.length, shown: namedFirst(best) };
  };
}

/** Those that bear what was asked for in their title, heading or row before those that only mention it. */
const namedFirst = (hits: readonly Hit[]): Hit[] => [
  ...hits.filter(({ found }) => found.length === 0),
  ...hits.filter(({ found }) => found.length > 0),
];

/** The page itself by its title, the rows of its parts list, its headings. */
function placesOf(
  [, , title, places, rows]: SearchPage,
  names: readonly string[],
  cut: readonly (readonly string[])[],
): Place[] {
  const say = (says: readonly number[]) => says.map((name) => cut[name]!);
  return [
    { shown: "", at: "", heading: indexWords(title), names: [], says: [] },
    ...rows.map(([says, at]) => {
      const shown = says.map((name) => names[name]).join(", ");
      return { shown, at, heading: say(says).flat(), names: [], says: [], isRow: true };
    }),
    ...places.map(([shown, at, says]) => ({
      ...{ shown, at, says },
      heading: indexWords(shown),
      names: say(says),
    })),
  ];
}

function hitOf(data: SearchData, page: number, place: Place, found: readonly number[]): Hit {
  const [kind, file, title] = data.pages[page]!;
  return {
    ...{ title, kind, heading: place.shown, isRow: place.isRow ?? false },
    href: place.at === "" ? file : `${file}#${place.at}`,
    found: found.map((at) => data.names[place.says[at]!]!),
  };
}
