import type { RecordCode, RecordProblem } from "./problems.ts";

/** `words` are whole sentences: what was found, what was expected, what to do. */
export const problem = (code: RecordCode, words: string, at?: string): RecordProblem => ({
  code,
  message: words,
  at,
});

/** The same problem at a place in a file. */
export const placed = (found: RecordProblem, at: string): RecordProblem => ({
  ...found,
  at: found.at === undefined ? at : `${at}.${found.at}`,
});
