/** Every formula of the workshop with its source and the range in which it holds: one table, from which pages and notes are made. */

import { air } from "./air.ts";
import { bolts } from "./bolts.ts";
import type { Chapter, Formula, SumName } from "./formula.ts";
import { threads } from "./threads.ts";
import { units } from "./units.ts";

export const chapters: readonly Chapter[] = [units, threads, bolts, air];

/** What the signs in the formulas of a sum mean. */
export function signsOf(sum: SumName): readonly string[] {
  return chapters
    .filter(({ formulas }) => formulas.some(({ sums }) => sums.includes(sum)))
    .map(({ signs }) => signs)
    .filter((signs) => signs !== "");
}

/** What a sum reckons by, in the order of the table. */
export function formulasOf(sum: SumName): readonly Formula[] {
  return chapters.flatMap(({ formulas }) => formulas).filter(({ sums }) => sums.includes(sum));
}
