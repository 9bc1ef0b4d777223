/** An inverted index of pages: which words stand on which pages, and in which field. Plain data, small as JSON. */
import { indexWords } from "./words.ts";

/** The fields of a page, each with its weight; a field is one bit of an entry, in this order. */
export const fields = [
  { name: "title", weight: 10 },
  { name: "headings", weight: 4 },
  { name: "terms", weight: 3 },
] as const;

export type FieldTexts = Readonly<Record<(typeof fields)[number]["name"], readonly string[]>>;

export interface SearchIndex {
  readonly pages: number;
  /** Sorted. */
  readonly words: readonly string[];
  /** For each word its entries, ascending, each as the difference from the one before. An entry is page · 8 + field bits. */
  readonly entries: readonly (readonly number[])[];
}

/** Indexes pages, numbered from 0. O(words · log words). */
export function indexPages(pages: readonly FieldTexts[]): SearchIndex {
  const found = new Map<string, Map<number, number>>();
  for (const [page, texts] of pages.entries()) {
    for (const [bit, { name }] of fields.entries()) {
      for (const word of texts[name].flatMap(indexWords)) note(found, word, page, 1 << bit);
    }
  }
  const words = [...found.keys()].sort();
  return { pages: pages.length, words, entries: words.map((word) => differences([...found.get(word)!])) };
}

function note(found: Map<string, Map<number, number>>, word: string, page: number, bit: number): void {
  const pages = found.get(word) ?? new Map<number, number>();
  pages.set(page, (pages.get(page) ?? 0) | bit);
  found.set(word, pages);
}

/** Pages were noted in ascending order. */
function differences(pages: readonly (readonly [page: number, bits: number])[]): number[] {
  let last = 0;
  return pages.map(([page, bits]) => {
    const entry = page * 8 + bits;
    const difference = entry - last;
    last = entry;
    return difference;
  });
}

/** Reads the entries of a word. */
export function eachEntry(
  index: SearchIndex,
  word: number,
  use: (page: number, weight: number) => void,
): void {
  let entry = 0;
  for (const difference of index.entries[word]!) {
    entry += difference;
    use(entry >> 3, weights[entry & 7]!);
  }
}

/** The weight of each combination of fields. */
const weights = Array.from({ length: 8 }, (_, bits) =>
  fields.reduce((sum, { weight }, bit) => sum + (bits & (1 << bit) ? weight : 0), 0),
);
