/** What is said on a right order that is not the written one. */

import type { Swap } from "../../engine/procedure/swaps.ts";
import { turnedRound } from "../../engine/procedure/turned-round.ts";
import { t } from "../../engine/words.ts";
import { sentence } from "../page/words.ts";
import type { Verdict } from "./verdict.ts";

/** `given` is right, `written` the order of the operation sheet; the author lets the pairs of `swaps` change places. */
export function verdictOnRight(
  given: readonly string[],
  written: readonly string[],
  swaps: readonly Swap[],
  title: (step: string) => string,
): Verdict {
  const turned = turnedRound(swaps, given);
  const lines = turned.map(({ first, then, because }) => ({
    text: sentence(t`“${title(then)}” before “${title(first)}”: ${because}`),
    reasons: [],
    critical: false,
  }));
  const detail = detailOn(turned.length, pairsTurned(given, written));
  return { headline: t`This order is right.`, detail, lines };
}

/** `allowed` of the `turned` pairs are the other way round because the author lets them be. */
function detailOn(allowed: number, turned: number): string {
  if (turned === 0) return t`It is the order of the operation sheet.`;
  if (allowed === 0) return t`It is not the order of the operation sheet, and works just as well.`;
  const pairs = allowed === 1 ? t`one pair of steps that` : t`pairs of steps that`;
  return allowed === turned
    ? t`It differs from the operation sheet only in ${pairs} may change places, as its author says.`
    : t`It is not the order of the operation sheet, and works just as well. In it there ${allowed === 1 ? t`is` : t`are`} ${pairs} may change places, as the author says.`;
}

/** How many pairs of steps stand the other way round than written. */
function pairsTurned(given: readonly string[], written: readonly string[]): number {
  const places = given.map((step) => written.indexOf(step));
  return places.reduce(
    (sum, place, index) => sum + places.slice(index + 1).filter((later) => later < place).length,
    0,
  );
}
