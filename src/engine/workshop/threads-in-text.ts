/** Threads that are named in running text. */
import { parseDesignation } from "./designation.ts";

/**
 * The ways of writing a thread that mean nothing else in prose: two bare whole numbers ("10-24 hours") are none, and names
 * of series count in capitals alone ("2 BA", not "ba").
 */
const written = [
  String.raw`M ?\d+(?:[.,]\d+)?(?: ?[x×] ?\d*[.,]?\d+)?`,
  String.raw`\d{1,2} ?BA`,
  String.raw`#\d{1,2}-\d{1,3}(?: ?UN(?:C|F|EF|S))?`,
  String.raw`(?:\d+ )?(?:\d+\/\d+|[¼½¾⅛⅜⅝⅞])(?: ?(?:inch|in|"|″))?(?: ?[-–x×] ?\d+)?(?: ?(?:UN(?:C|F|EF|S)|BS[WFP]|Whitworth))?`,
  "BA|BS[WFP]|UN(?:C|F|EF|S)|Whitworth",
];

const pattern = RegExp(String.raw`(?<![\p{L}\p{N}.\/#])(?:${written.join("|")})(?![\p{L}\p{N}\/])`, "gu");

const series = /^\p{L}+$/u;

/** Each thread, or series of threads, once, as it is written. A size that no table has is left out. O(length). */
export function threadsIn(text: string): string[] {
  const found = (text.match(pattern) ?? []).filter((each) => series.test(each) || parseDesignation(each).ok);
  return [...new Set(found)];
}
