/** The prose of all pages as the search sees it: what has been loaded so far. */
import { markerFor } from "../../engine/search/marks.ts";
import { type Shard, sectionsWith, shardName } from "../../engine/search/prose.ts";
import type { ProseTexts, SearchData } from "../../model/search-data.ts";
import type { Asked } from "./asked.ts";
import { groupOf } from "./groups.ts";
import type { Hit } from "./hits.ts";

export interface Said {
  readonly count: number;
  readonly best: readonly Hit[];
}

export interface ProseView {
  /** Whether a word, or one that begins with it, stands in prose that is here. */
  readonly isKnown: (word: string) => boolean;
  /** Sections that say all of it, but for the places that are shown already: how many, and the best `most` of them. */
  readonly find: (asked: Asked, shown: readonly Hit[], most: number) => Said;
  /** Adds the sentence that says most of it, where the text is here. */
  readonly withSentence: (asked: Asked) => (hit: Hit) => Hit;
}

export const nothingSaid: ProseView = {
  isKnown: () => false,
  find: () => ({ count: 0, best: [] }),
  withSentence: () => (hit) => hit,
};

/** `loaded` gives what a script of a shard has left; undefined where it is not here yet. */
export function proseView(data: SearchData, loaded: (name: string) => unknown): ProseView {
  const { prose } = data;
  if (prose === undefined) return nothingSaid;
  const shard = (name: string) => loaded(prose.words[name] ?? "") as Shard | undefined;
  const starts = startsOf(data);
  const pageOfFile = new Map(data.pages.map(([, file], page) => [file, page]));
  /** The page of a hit and which of its sections it is: 0 is the page itself. */
  const placeOf = ({ href }: Hit): { page: number; section: number } => {
    const [file, at = ""] = href.split("#");
    const page = pageOfFile.get(file!)!;
    const section = at === "" ? 0 : 1 + data.pages[page]![3].findIndex((place) => place[1] === at);
    return { page, section };
  };
  // A common word stands in thousands of sections, and each key asks again: only what is shown is made into a hit.
  const find = ({ ways }: Asked, shown: readonly Hit[], most: number): Said => {
    // A row of a parts list is no section.
    const places = shown.filter(({ isRow }) => !isRow).map(placeOf);
    const seen = new Set(places.map(({ page, section }) => starts[page]! + section));
    const sections = ways
      .flatMap((meant) => sectionsWith(meant, shard, starts.at(-1)!))
      .map(({ section }) => section)
      .filter((section) => !seen.has(section) && seen.add(section));
    return {
      count: sections.length,
      best: sections.slice(0, most).map((section) => sectionHit(data, starts, section)),
    };
  };
  const textsAt = (hit: Hit): readonly string[] => {
    const { page, section } = placeOf(hit);
    const texts = loaded(prose.texts[page] ?? "") as ProseTexts | undefined;
    return texts?.find(([number]) => number === section)?.[1] ?? [];
  };
  return {
    isKnown: (word) => sectionsWith([[word]], shard, 1).length > 0 && shard(shardName(word)) !== undefined,
    find,
    withSentence: (asked) => {
      const marker = markerFor(asked.ways.flat(2));
      return (hit) => ({ ...hit, sentence: marker.sentence(textsAt(hit)) });
    },
  };
}

/** The number of the first section of each page, and of all sections at the end. */
function startsOf({ pages }: SearchData): number[] {
  const starts = [0];
  for (const [, , , places] of pages) starts.push(starts.at(-1)! + 1 + places.length);
  return starts;
}

function sectionHit(data: SearchData, starts: readonly number[], section: number): Hit {
  const page = pageOf(starts, section);
  const [kind, file, title, places] = data.pages[page]!;
  const [heading, at] = places[section - starts[page]! - 1] ?? ["", ""];
  const href = at === "" ? file : `${file}#${at}`;
  return { href, title, kind, heading, isRow: false, found: [], group: groupOf(data, page, at) };
}

/** The last page that starts at the section or before it. O(log pages). */
function pageOf(starts: readonly number[], section: number): number {
  let [low, high] = [0, starts.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= section) low = middle;
    else high = middle;
  }
  return low;
}
