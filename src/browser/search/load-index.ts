/** Makes a lunr index of what the bundler has packed. */
import lunr from "lunr";
import type { PackedIndex } from "../../model/search-data.ts";

/** Nothing is kept of a word's places on a page; lunr only reads it. */
const nothing = {};

/** O(words of all pages). */
export function loadIndex({ words, fields }: PackedIndex): lunr.Index {
  const names = fields.map(([name]) => name);
  const postings = words.map((_, place) => postingOf(place, names));
  const fieldVectors = fields.flatMap(([name, pages]) =>
    pages.map((packed, page) => [
      `${name}/${page}`,
      unpack(packed, page, (place) => postings[place]![name]!),
    ]),
  );
  return lunr.Index.load({
    ...{ version: lunr.version, fields: names, fieldVectors, pipeline: [] },
    invertedIndex: words.map((word, place) => [word, postings[place]]),
  });
}

type Posting = Record<string, Record<string, object>>;

const postingOf = (place: number, names: readonly string[]): Posting =>
  Object.assign(Object.fromEntries(names.map((name) => [name, {}])), { _index: place }) as unknown as Posting;

function unpack(
  packed: readonly number[],
  page: number,
  pagesWith: (place: number) => Record<string, object>,
): number[] {
  const elements: number[] = [];
  let place = 0;
  for (let i = 0; i < packed.length; i += 2) {
    place += packed[i]!;
    elements.push(place, packed[i + 1]!);
    pagesWith(place)[page] = nothing;
  }
  return elements;
}
