/** Scores in words, the same on the page and on the command line. */

import { numberWords } from "../words.ts";

/** At most two decimals. */
export const pointsWords = (points: number): string => numberWords(Math.round(points * 100) / 100);

/** A pass mark, rounded up: a result just below it does not read as it. */
export const markWords = (pass: number): string => `${numberWords(Math.ceil(pass * 1000 - 1e-9) / 10)} %`;

/** Rounded down, so that a result just below the mark does not read as the mark. */
export const shareWords = (fraction: number): string =>
  `${numberWords(Math.floor(fraction * 1000 + 1e-9) / 10)} %`;
