/** What the search shows: pages, and the best place on each. */
import lunr from "lunr";
import { type CutPlace, placeFinder } from "../../engine/search/best-place.ts";
import { indexWords } from "../../engine/search/words.ts";
import type { PageKind } from "../../model/address.ts";
import type { SearchData } from "../../model/search-data.ts";
import { find } from "./find.ts";

export interface Hit {
  /** Relative to the site, with the place on the page. */
  readonly href: string;
  readonly title: string;
  readonly kind: PageKind;
  /** The heading of the best place on the page; "" where it is the page itself. */
  readonly heading: string;
}

export interface Hits {
  /** How many pages were found in all. */
  readonly total: number;
  /** The best of them. */
  readonly shown: readonly Hit[];
}

/** As many as fit on two screens of a phone. */
const most = 20;

/** Gives a search over the data; words are cut once a page and kept, for the next letter asks for the same pages. */
export function searcher(data: SearchData): (query: string) => Hits {
  const index = lunr.Index.load(data.index);
  const names = data.names.map(indexWords);
  const cut = new Map<number, readonly CutPlace[]>();
  const cutPage = (page: number): readonly CutPlace[] => {
    const [, , title, places] = data.pages[page]!;
    const made = [
      { heading: indexWords(title), names: [] },
      ...places.map(([heading, , own]) => ({
        heading: indexWords(heading),
        names: own.flatMap((name) => names[name]!),
      })),
    ];
    cut.set(page, made);
    return made;
  };
  return (query) => {
    const found = find(index, query);
    const bestPlace = placeFinder(query);
    const shown = found.slice(0, most).map(({ page }) => {
      const [title, ...places] = cut.get(page) ?? cutPage(page);
      return hitOf(data, page, bestPlace(title!, places));
    });
    return { total: found.length, shown };
  };
}

function hitOf(data: SearchData, page: number, at: number): Hit {
  const [kind, file, title, places] = data.pages[page]!;
  const place = places[at];
  if (place === undefined) return { href: file, title, kind, heading: "" };
  return { href: `${file}#${place[1]}`, title, kind, heading: place[0] };
}
