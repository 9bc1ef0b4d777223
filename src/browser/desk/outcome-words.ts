/** How an observation can end, as the sheets say it. */
import type { Outcome } from "../../engine/competency/levels.ts";
import type { Choice } from "./fields.ts";

export const outcomeChoices: readonly Choice<Outcome>[] = [
  { value: "watched", text: "watched: done with help, or with words from me" },
  { value: "unaided", text: "unaided: done without help" },
  { value: "not yet", text: "not yet, because …" },
  { value: "stopped for safety", text: "stopped for safety" },
];

/** Undefined where the words may be left out or are there. */
export const wordsWanted = (outcome: Outcome, words: string): string | undefined =>
  words.trim() !== "" || outcome === "watched" || outcome === "unaided"
    ? undefined
    : outcome === "not yet"
      ? "Write what is not there yet: “not yet, because” ends in a reason."
      : "Write what happened: whoever watches next has to know why it was stopped.";
