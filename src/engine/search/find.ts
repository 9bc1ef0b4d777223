/** Finds the pages that answer a query, best first. */
import { type Fit, fitWithOneError, fitWithoutError } from "./match.ts";
import { eachEntry, type SearchIndex } from "./search-index.ts";
import { queryWords } from "./words.ts";

export interface Found {
  readonly page: number;
  /** How many of the query's words the page answers. */
  readonly words: number;
  readonly score: number;
}

/**
 * The pages that answer most of the query's words, which is all of them where some page does. A word counts by how well it
 * fits, where it stands, and how rare it is: log(1 + pages / pages with it), after K. Spärck Jones, "A statistical
 * interpretation of term specificity", Journal of Documentation 28 (1972). O(words of the index + entries that fit).
 */
export function find(index: SearchIndex, query: string): Found[] {
  const total = new Float64Array(index.pages);
  const answered = new Uint8Array(index.pages);
  for (const typed of new Set(queryWords(query))) {
    for (const [page, score] of scoresOf(index, typed).entries()) {
      if (score === 0) continue;
      total[page]! += score;
      answered[page]!++;
    }
  }
  const most = answered.reduce((a, b) => Math.max(a, b), 0);
  if (most === 0) return [];
  const found = [...answered.keys()].filter((page) => answered[page] === most);
  return found
    .sort((a, b) => total[b]! - total[a]! || a - b)
    .map((page) => ({ page, words: most, score: total[page]! }));
}

/** For each page the best that any of its words scores for the typed one. */
function scoresOf(index: SearchIndex, typed: string): Float64Array {
  const best = new Float64Array(index.pages);
  for (const [word, fitting] of fittingWords(index, typed)) {
    const rarity = Math.log(1 + index.pages / index.entries[word]!.length);
    eachEntry(index, word, (page, weight) => {
      best[page] = Math.max(best[page]!, fitting * weight * rarity);
    });
  }
  return best;
}

/** Typing errors are allowed for only where nothing fits without. */
function fittingWords({ words }: SearchIndex, typed: string): (readonly [word: number, fit: number])[] {
  const sure = fitting(words, fitWithoutError(typed));
  return sure.length > 0 ? sure : fitting(words, fitWithOneError(typed));
}

function fitting(words: readonly string[], fits: Fit): (readonly [word: number, fit: number])[] {
  const found: (readonly [number, number])[] = [];
  for (const [at, word] of words.entries()) {
    const value = fits(word);
    if (value > 0) found.push([at, value]);
  }
  return found;
}
