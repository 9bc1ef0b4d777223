/** How an observation can end, as the sheets say it. */

import type { Outcome } from "../../engine/competency/levels.ts";
import { t } from "../../engine/words.ts";
import type { Choice } from "./fields.ts";

export const outcomeChoices: readonly Choice<Outcome>[] = [
  { value: "watched", text: t`watched: done with help, or with words from me` },
  { value: "unaided", text: t`unaided: done without help` },
  { value: "not yet", text: t`not yet, because …` },
  { value: "stopped for safety", text: t`stopped for safety` },
];

/** Undefined where the words may be left out or are there. */
export const wordsWanted = (outcome: Outcome, words: string): string | undefined =>
  words.trim() !== "" || outcome === "watched" || outcome === "unaided"
    ? undefined
    : outcome === "not yet"
      ? t`Write what is not there yet: “not yet, because” ends in a reason.`
      : t`Write what happened: whoever watches next has to know why it was stopped.`;
