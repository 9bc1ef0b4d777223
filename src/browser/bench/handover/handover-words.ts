/** What is said of a place that comes from another device. */
import { plural, t } from "../../../engine/words.ts";
import type { Card } from "../cards.ts";
import { doneOf, placeWords } from "../progress.ts";
import { clockWords } from "../waits/wait-words.ts";
import type { Handed, Refused, Sheet } from "./code.ts";

/** "At 14:05: step 7 of 21, 6 ticked off." */
export function tookWords(cards: readonly Card[], handed: Handed, now: number): string {
  const clock = clockWords(handed.takenAt, now);
  return t`At ${clock}: ${whatWords(cards, handed)}.`;
}

/** "Taken from another device at 14:05: step 7 of 21, 6 ticked off." */
export function takenWords(cards: readonly Card[], handed: Handed, now: number): string {
  const clock = clockWords(handed.takenAt, now);
  return t`Taken from another device at ${clock}: ${whatWords(cards, handed)}.`;
}

/** "step 7 of 21, 6 ticked off, 1 wait running" */
export function whatWords(cards: readonly Card[], { place }: Pick<Handed, "place">): string {
  const where = placeWords(cards, place.card);
  const done = doneOf(cards, place);
  const waits = place.timers.length;
  if (waits === 0) return t`${where}, ${done} ticked off`;
  return plural(
    waits,
    t`${where}, ${done} ticked off, ${waits} wait`,
    t`${where}, ${done} ticked off, ${waits} waits`,
  );
}

/** Why a link is not taken, and what to do. */
export function refusedWords({ refused, found }: Refused, sheet: Sheet): string {
  const words: Readonly<Record<Refused["refused"], string>> = {
    version: t`The link was made by another edition of this page (${found}). Load the page anew on both devices, and hand over again.`,
    module: t`The link belongs to another procedure, “${found}”, and this page is “${sheet.module}”. Open it on the bench page of that procedure.`,
    revision: t`The link was made with revision ${found}, and this page is revision ${sheet.revision}: its steps may differ. Load the page anew on both devices, and hand over again, or find the step by hand.`,
    steps: t`The two devices have different steps under the same revision. Load the page anew on both, and hand over again, or find the step by hand.`,
    damaged: t`The link is not whole: some of it is missing or was changed. Show the code again, or send the link in one piece.`,
  };
  return words[refused];
}
