/** One card at a time; which one, the place says. */
import { t } from "../../engine/words.ts";
import { replaceAddress } from "../page/address.ts";
import { element, goTo } from "../page/element.ts";
import { type Card, cardWith } from "./cards.ts";
import type { Keeper } from "./keeper.ts";
import { placeWords } from "./progress.ts";

export class Deck {
  readonly cards: readonly Card[];
  readonly #page: HTMLElement;
  readonly #keeper: Keeper;
  readonly #note = element("p", { class: "bench-note" });
  /** Called when another card is turned to. */
  onTurn: () => void = () => {};

  constructor(page: HTMLElement, cards: readonly Card[], keeper: Keeper) {
    this.#page = page;
    this.cards = cards;
    this.#keeper = keeper;
    page.classList.add("is-turned");
    addEventListener("hashchange", () => this.#follow());
    keeper.watch(({ card }) => this.#show(card));
    this.#open();
  }

  get at(): number {
    return this.#indexOf(this.#keeper.place.card);
  }

  get card(): Card {
    return this.cards[this.at]!;
  }

  turn(by: number): void {
    const card = this.cards[this.at + by];
    if (card !== undefined) this.turnTo(card.id);
  }

  turnTo(id: string): void {
    this.#keeper.change({ card: id });
    this.arrive();
  }

  /** After the card has changed: the address follows, and the focus goes to the heading, so that it is read out. */
  arrive(): void {
    const { id, main } = this.card;
    this.#note.remove();
    this.onTurn();
    replaceAddress(`#${id}`);
    const heading = main.querySelector<HTMLElement>("h2, h3") ?? main;
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
    this.#page.scrollIntoView({ block: "start", behavior: "instant" });
  }

  /** The address goes before what was kept. Where one comes back to what was kept, that is said, with a way to the beginning. */
  #open(): void {
    const named = cardWith(this.cards, hash());
    if (named >= 0) this.#keeper.change({ card: this.cards[named]!.id });
    if (named >= 0 || this.at === 0) return;
    const first = element("a", { href: `#${this.cards[0]!.id}` }, t`To the beginning`);
    const where = placeWords(this.cards, this.#keeper.place.card);
    this.#note.replaceChildren(t`You were here, at ${where}.`, " ", first);
    this.#page.prepend(this.#note);
  }

  #follow(): void {
    const at = cardWith(this.cards, hash());
    const card = this.cards[at];
    if (card === undefined) return;
    if (hash() === card.id) {
      this.turnTo(card.id);
      return;
    }
    this.#note.remove();
    this.onTurn();
    this.#keeper.change({ card: card.id });
    goTo(document.getElementById(hash())!);
  }

  #show(id: string): void {
    const card = this.cards[this.#indexOf(id)]!;
    for (const part of this.cards.flatMap(({ elements }) => elements))
      part.classList.toggle("is-away", !card.elements.includes(part));
    this.#page.classList.toggle("is-step", card.isStep);
  }

  #indexOf(id: string): number {
    return Math.max(
      0,
      this.cards.findIndex((card) => card.id === id),
    );
  }
}

/** The part of the address after `#`; "" where it is written wrongly. */
export function hash(): string {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return "";
  }
}
