/** Finds the pages that answer a query, best first. */
import lunr from "lunr";
import { allowsError, isWhole, stemOf } from "../../engine/search/match.ts";
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
    for (const { ref, score } of knownResultsFor(index, typed)) {
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

/** Words that were asked for lately: all but the last stay while one types. */
const known = new WeakMap<lunr.Index, Map<string, lunr.Index.Result[]>>();
const mostKnown = 50;

function knownResultsFor(index: lunr.Index, typed: string): lunr.Index.Result[] {
  const before = known.get(index) ?? new Map<string, lunr.Index.Result[]>();
  const results = before.get(typed) ?? resultsFor(index, typed);
  if (before.size >= mostKnown) before.clear();
  known.set(index, before.set(typed, results));
  return results;
}

/** What is rather a word than the beginning of one begins others only where no page has the word itself. */
function resultsFor(index: lunr.Index, typed: string): lunr.Index.Result[] {
  const whole = isWhole(typed) ? index.query((query) => query.term(typed, {})) : [];
  if (whole.length > 0) return whole;
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
