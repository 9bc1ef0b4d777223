/** Moves in words. */
import type { Move } from "../../engine/procedure/answer-order.ts";

/** "“Undo the board” goes directly after “Let the spring down”". */
export function moveWords({ step, after }: Move, title: (step: string) => string): string {
  return after === null
    ? `“${title(step)}” goes first`
    : `“${title(step)}” goes directly after “${title(after)}”`;
}
