/** Faults to go over, in sentences. */

import { rightNeeded } from "../../engine/review/faults.ts";
import { t } from "../../engine/words.ts";
import { counted } from "../page/words.ts";
import type { ListedFault } from "./list.ts";

/** "Quiz: missed twice. Right since, and once more to go." One sentence for each place. */
export function placeWords({ in: places, titles }: ListedFault): string[] {
  return places.map(({ missed, rightSince, critical }, at) => {
    const left = rightNeeded(critical) - rightSince;
    const since = rightSince > 0 ? t` Right since, and ${times(left)} more to go.` : "";
    return t`${titles[at]!}: missed ${times(missed)}.${since}`;
  });
}

const times = (count: number): string => [t`never`, t`once`, t`twice`][count] ?? counted(count, "time");

/** "7 faults in 2 modules, 3 of them critical." */
export function sumWords(faults: readonly ListedFault[], modules: number): string {
  const critical = faults.filter((fault) => fault.critical).length;
  const grave = critical === 0 ? "" : t`, ${critical} of them critical`;
  return t`${counted(faults.length, "fault")} in ${counted(modules, "module")}${grave}.`;
}

export const nothing = t`Nothing to go over. What goes wrong in a quiz, a practice or a dry run in this browser comes onto this list.`;
