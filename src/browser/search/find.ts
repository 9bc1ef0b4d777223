/** Finds the pages that answer a query, best first. */
import lunr from "lunr";
import { isWhole, stemOf } from "../../engine/search/match.ts";

export interface Found {
  readonly page: number;
  /** How many of the query's words the page answers. */
  readonly words: number;
  readonly score: number;
}

/**
 * The pages that answer most of the query's words, each of which may stand for several, by the sum of lunr's scores. Those are
 * pages with all words where there is one. A word also fits as the beginning of another and by its stem.
 */
export function find(index: lunr.Index, meant: readonly (readonly string[])[]): Found[] {
  const found = new Map<number, { words: number; score: number }>();
  for (const words of meant) {
    for (const [ref, score] of bestScores(index, words)) {
      const page = found.get(ref) ?? { words: 0, score: 0 };
      found.set(ref, { words: page.words + 1, score: page.score + score });
    }
  }
  const most = Math.max(0, ...[...found.values()].map(({ words }) => words));
  return [...found]
    .filter(([, { words }]) => words === most)
    .map(([page, one]) => ({ page, ...one }))
    .sort((a, b) => b.score - a.score || a.page - b.page);
}

/** Whether some page has the word, or one that begins with it. */
export const isKnown = (index: lunr.Index, typed: string): boolean =>
  knownResultsFor(index, typed).length > 0;

function bestScores(index: lunr.Index, words: readonly string[]): Map<number, number> {
  const best = new Map<number, number>();
  for (const { ref, score } of words.flatMap((word) => knownResultsFor(index, word)))
    best.set(Number(ref), Math.max(score, best.get(Number(ref)) ?? 0));
  return best;
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
  return index.query((query) => {
    query.term(typed, { boost: 10 });
    // A single letter begins too many words to mean any of them.
    if (typed.length > 1) query.term(typed, { boost: 3, wildcard: lunr.Query.wildcard.TRAILING });
    const stem = stemOf(typed);
    if (stem !== typed) query.term(stem, { wildcard: lunr.Query.wildcard.TRAILING });
  });
}
