/** The verdict on an order, in words. */

import type { ExplainedOrder } from "../../engine/procedure/explain-order.ts";
import type { Swap } from "../../engine/procedure/swaps.ts";
import { t } from "../../engine/words.ts";
import { counted, pairWords, sentence, type Told } from "../page/words.ts";
import { verdictOnRight } from "./right-order.ts";

export interface VerdictLine extends Told {
  readonly critical: boolean;
}

export interface Verdict {
  readonly headline: string;
  readonly detail: string;
  /** What must come before what, and why: each pair that is the wrong way round; of a right order, what the author lets be so. */
  readonly lines: readonly VerdictLine[];
}

/** `given` is the order judged, `written` the one of the operation sheet, `swaps` what the author lets change places in it. */
export function verdictOn(
  answer: ExplainedOrder,
  given: readonly string[],
  written: readonly string[],
  title: (step: string) => string,
  swaps: readonly Swap[] = [],
): Verdict {
  if (answer.valid) return verdictOnRight(given, written, swaps, title);
  return {
    headline: answer.failedCritical
      ? t`Not right, and critical: at the bench it would hurt someone or ruin a part.`
      : t`This order is not right yet.`,
    detail: [
      ...amissWords(answer),
      t`${counted(answer.moves, "move")} ${answer.moves === 1 ? t`mends` : t`mend`} it.`,
    ].join(" "),
    lines: [
      ...answer.extra.map((step) => line(t`“${title(step)}” does not belong to this job`)),
      ...answer.missing.map((step) => line(t`“${title(step)}” belongs to this job and was left out`)),
      ...answer.told.map(({ first, then, reasons, critical }) => ({
        ...pairWords(title(first), title(then), reasons),
        critical,
      })),
    ],
  };
}

const line = (text: string): VerdictLine => ({ text: sentence(text), reasons: [], critical: false });

/** What is amiss, each kind counted. */
function amissWords({ told, extra, missing }: ExplainedOrder): string[] {
  const does = (count: number, one: string, many: string): string =>
    `${counted(count, "step")} ${count === 1 ? one : many}.`;
  return [
    ...(extra.length > 0 ? [does(extra.length, t`does not belong here`, t`do not belong here`)] : []),
    ...(missing.length > 0 ? [does(missing.length, t`is missing`, t`are missing`)] : []),
    ...(told.length > 0 ? [pairs(told.length)] : []),
  ];
}

const pairs = (count: number): string =>
  count === 1 ? t`One pair is the wrong way round.` : t`${count} pairs are the wrong way round.`;
