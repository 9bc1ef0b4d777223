/** What the search shows: pages, and the best place on each. */
import { type CutPlace, findersForWords } from "../../engine/search/best-place.ts";
import { indexWords } from "../../engine/search/words.ts";
import type { PageKind } from "../../model/address.ts";
import type { SearchData, SearchPage } from "../../model/search-data.ts";
import { type Asked, asker } from "./asked.ts";
import { type Found, find } from "./find.ts";
import { type Group, groupOf } from "./groups.ts";
import { loadIndex } from "./load-index.ts";
import { nothingSaid, type ProseView } from "./prose-view.ts";

export interface Hit {
  /** Relative to the site, with the place on the page. */
  readonly href: string;
  readonly title: string;
  readonly kind: PageKind;
  readonly group: Group;
  /** The heading of the best place on the page, or what its row says; "" where it is the page itself. */
  readonly heading: string;
  /** It is a row of the parts list. */
  readonly isRow: boolean;
  /** What stands there that was asked for and is in neither heading nor title. */
  readonly found: readonly string[];
  /** What stands there as prose, once it is here. */
  readonly sentence?: string | undefined;
}

export interface Hits {
  /** How many pages were found in all. */
  readonly total: number;
  /** The best of them. */
  readonly shown: readonly Hit[];
  /** How many sections say it in their prose that are not among those shown, as far as the shards are here. */
  readonly saidBy: number;
  /** The best of those. */
  readonly said: readonly Hit[];
  readonly asked: Asked;
}

/** As many as fit on two screens of a phone. */
const most = 20;

/** A place as it is shown, with its words cut. */
interface Place extends CutPlace {
  readonly shown: string;
  readonly at: string;
  readonly says: readonly number[];
}

/** The prose that is here when a key is pressed. */
export type Search = (query: string, prose?: ProseView) => Hits;

/**
 * Gives a search over the data, which knows lists of names that mean the same; words are cut once a page and kept, for the next
 * letter asks for the same pages.
 */
export function searcher(data: SearchData, sameMeaning: readonly (readonly string[])[] = []): Search {
  const index = loadIndex(data.index);
  const ask = asker(index, data.index.words, sameMeaning);
  const names = data.names.map(indexWords);
  const cut = new Map<number, readonly Place[]>();
  const placesOn = (page: number): readonly Place[] => {
    const made = cut.get(page) ?? placesOf(data.pages[page]!, data.names, names);
    cut.set(page, made);
    return made;
  };
  return (query, prose = nothingSaid) => {
    const asked = ask(query, prose.isKnown);
    const found = inAllWays(asked, (meant) => find(index, meant));
    const best = found.slice(0, most).map(({ page, way }) => {
      const { bestPlace, namesAt } = findersForWords(asked.ways[way]!);
      const [title, ...places] = placesOn(page);
      const at = bestPlace(title!, places);
      const place = places[at] ?? title!;
      return hitOf(data, page, place, namesAt(title!, place));
    });
    const shown = namedFirst(best);
    const said = prose.find(asked, shown, most);
    return {
      total: found.length,
      shown: shown.map(prose.withSentence(asked)),
      saidBy: said.count,
      said: said.best.map(prose.withSentence(asked)),
      asked,
    };
  };
}

/** What is found as it was asked for comes before what is found in other words. */
function inAllWays(
  { ways }: Asked,
  find: (meant: readonly (readonly string[])[]) => Found[],
): (Found & { way: number })[] {
  const seen = new Set<number>();
  const answers = ways.map((meant) => ({ found: find(meant), length: meant.length }));
  // In other words only what answers all of them, where something does.
  const isWhole = answers.some(({ found, length }) => found[0]?.words === length);
  return answers.flatMap(({ found, length }, way) =>
    found
      .filter(({ page, words }) => (!isWhole || words === length) && !seen.has(page) && seen.add(page))
      .map((one) => ({ ...one, way })),
  );
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
    group: groupOf(data, page, place.at, place.isRow),
    href: place.at === "" ? file : `${file}#${place.at}`,
    found: found.map((at) => data.names[place.says[at]!]!),
  };
}
