/** Scores in words, the same on the page and on the command line. */

import { numberWords } from "../words.ts";

/** At most two decimals. */
export const pointsWords = (points: number): string => numberWords(Math.round(points * 100) / 100);

/** Rounded down, so that a result just below the mark does not read as the mark. */
export const shareWords = (fraction: number): string =>
  `${numberWords(Math.floor(fraction * 1000 + 1e-9) / 10)} %`;
