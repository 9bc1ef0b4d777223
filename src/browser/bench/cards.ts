import { t } from "../../engine/words.ts";

/** The cards of the bench view: what to know before, one for each step, what comes after. */

export interface Card {
  /** What the address names it by. */
  readonly id: string;
  readonly title: string;
  readonly isStep: boolean;
  /** The step, or what stands before or after all of them. */
  readonly main: HTMLElement;
  /** All that is shown with it; the heading of a phase is shown with each of its steps. */
  readonly elements: readonly HTMLElement[];
}

/** Plain prose stands on the card of the step before it. */
export function cardsOf(page: HTMLElement): Card[] {
  const plain = (main: HTMLElement, title: string): Card => ({
    id: main.id,
    title,
    isStep: false,
    main,
    elements: [main],
  });
  return [
    plain(page.querySelector<HTMLElement>(".bench-before")!, t`Before work`),
    ...stepCards([...page.querySelector(".bench-steps")!.children] as HTMLElement[]),
    plain(page.querySelector<HTMLElement>(".bench-after")!, t`When the work is done`),
  ];
}

function stepCards(elements: readonly HTMLElement[]): Card[] {
  const cards: (Card & { readonly elements: HTMLElement[] })[] = [];
  let phase: HTMLElement[] = [];
  for (const each of elements) {
    if (each.matches(".step")) {
      const title = each.querySelector("h3")?.textContent ?? "";
      cards.push({ id: each.id, title, isStep: true, main: each, elements: [...phase, each] });
    } else if (each.matches(".phase")) phase = [each];
    else if (cards.length > 0) cards.at(-1)!.elements.push(each);
    else phase.push(each);
  }
  return cards;
}

/** The card on which the element with an id stands; -1 where there is none. */
export function cardWith(cards: readonly Card[], id: string): number {
  const target = document.getElementById(id);
  return target === null
    ? -1
    : cards.findIndex(({ elements }) => elements.some((each) => each.contains(target)));
}
