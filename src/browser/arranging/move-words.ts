/** Moves in words. */

import type { Move } from "../../engine/procedure/answer-order.ts";
import { t } from "../../engine/words.ts";

/** "“Undo the board” goes directly after “Let the spring down”". */
export function moveWords({ step, after }: Move, title: (step: string) => string): string {
  return after === null
    ? t`“${title(step)}” goes first`
    : t`“${title(step)}” goes directly after “${title(after)}”`;
}
