/** Finds the pages that answer a query, best first. */
import lunr from "lunr";
import { allowsError, stemOf } from "../../engine/search/match.ts";
import { queryWords } from "../../engine/search/words.ts";

export interface Found {
  readonly page: number;
  /** How many of the query's words the page answers. */
  readonly words: number;
  readonly score: number;
}

/**
 * The pages that answer most of the query's words, which is all of them where some page does, by the sum of lunr's scores.
 * A word also fits as the beginning of another, by its stem and, only where nothing fits so, with one typing error.
 */
export function find(index: lunr.Index, query: string): Found[] {
  const found = new Map<number, { words: number; score: number }>();
  for (const typed of new Set(queryWords(query))) {
    for (const { ref, score } of resultsFor(index, typed)) {
      const page = found.get(Number(ref)) ?? { words: 0, score: 0 };
      found.set(Number(ref), { words: page.words + 1, score: page.score + score });
    }
  }
  const most = Math.max(0, ...[...found.values()].map(({ words }) => words));
  return [...found]
    .filter(([, { words }]) => words === most)
    .map(([page, one]) => ({ page, ...one }))
    .sort((a, b) => b.score - a.score || a.page - b.page);
}

function resultsFor(index: lunr.Index, typed: string): lunr.Index.Result[] {
  const sure = index.query((query) => {
    query.term(typed, { boost: 10 });
    // A single letter begins too many words to mean any of them.
    if (typed.length > 1) query.term(typed, { boost: 3, wildcard: lunr.Query.wildcard.TRAILING });
    const stem = stemOf(typed);
    if (stem !== typed) query.term(stem, { wildcard: lunr.Query.wildcard.TRAILING });
  });
  if (sure.length > 0 || !allowsError(typed)) return sure;
  return index.query((query) => query.term(typed, { editDistance: 1 }));
}
