/** How far one is, in words. */
import { t } from "../../engine/words.ts";
import type { Card } from "./cards.ts";
import type { Place } from "./place.ts";

export const stepsOf = (cards: readonly Card[]): readonly Card[] => cards.filter(({ isStep }) => isStep);

/** From 1; 0 for a card that is no step. */
export const numberOf = (cards: readonly Card[], id: string): number =>
  stepsOf(cards).findIndex((card) => card.id === id) + 1;

/** "step 7 of 21", or the card's title in quotation marks. */
export function placeWords(cards: readonly Card[], id: string): string {
  const number = numberOf(cards, id);
  const title = cards.find((card) => card.id === id)?.title ?? "";
  return number === 0 ? t`“${title}”` : t`step ${number} of ${stepsOf(cards).length}`;
}

/** Steps that are ticked off and still on the page. */
export const doneOf = (cards: readonly Card[], { done }: Place): number =>
  stepsOf(cards).filter(({ id }) => done.has(id)).length;

/** "Step 7 of 21 · 6 ticked off"; before and after the steps how many there are in all. */
export function whereWords(cards: readonly Card[], place: Place): string {
  const number = numberOf(cards, place.card);
  const total = stepsOf(cards).length;
  const done = doneOf(cards, place);
  if (number > 0) return t`Step ${number} of ${total} · ${done} ticked off`;
  const title = cards.find(({ id }) => id === place.card)?.title ?? "";
  return t`${title} · ${done} of ${total} ticked off`;
}
