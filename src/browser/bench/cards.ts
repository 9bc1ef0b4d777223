/** The cards of the bench view: what to know before, one for each step, what comes after. */

export interface Card {
  /** What the address names it by. */
  readonly id: string;
  readonly title: string;
  readonly isStep: boolean;
  readonly elements: readonly HTMLElement[];
}

/** A heading of a phase stands on the card of the step after it, plain prose on that of the step before it. */
export function cardsOf(page: HTMLElement): Card[] {
  const before = page.querySelector<HTMLElement>(".bench-before")!;
  const after = page.querySelector<HTMLElement>(".bench-after")!;
  return [
    { id: before.id, title: "Before work", isStep: false, elements: [before] },
    ...stepCards([...page.querySelector(".bench-steps")!.children] as HTMLElement[]),
    { id: after.id, title: "When the work is done", isStep: false, elements: [after] },
  ];
}

function stepCards(elements: readonly HTMLElement[]): Card[] {
  const groups: HTMLElement[][] = [];
  let waiting: HTMLElement[] = [];
  for (const each of elements) {
    if (each.matches(".step")) {
      groups.push([...waiting, each]);
      waiting = [];
    } else if (each.matches(".phase") || groups.length === 0) waiting.push(each);
    else groups.at(-1)!.push(each);
  }
  return groups.map((group) => {
    const step = group.find((each) => each.matches(".step"))!;
    return { id: step.id, title: step.querySelector("h3")?.textContent ?? "", isStep: true, elements: group };
  });
}

/** The card on which the element with an id stands; -1 where there is none. */
export function cardWith(cards: readonly Card[], id: string): number {
  const target = document.getElementById(id);
  return target === null
    ? -1
    : cards.findIndex(({ elements }) => elements.some((each) => each.contains(target)));
}
