/** One card at a time. */
import { replaceAddress } from "../page/address.ts";
import { element, goTo } from "../page/element.ts";
import type { Store } from "../page/store.ts";
import { capital } from "../page/words.ts";
import { Bar } from "./bar.ts";
import { type Card, cardsOf, cardWith } from "./cards.ts";
import { keyWords, turnOf } from "./keys.ts";
import { keepPlace, type Place, readPlace } from "./place.ts";
import { startOver } from "./start-over.ts";
import { foldTrays } from "./tray-fold.ts";

export class BenchView {
  readonly #page: HTMLElement;
  readonly #store: Store;
  readonly #cards: readonly Card[];
  readonly #bar: Bar;
  readonly #left = element("div", { class: "bench-left" });
  readonly #note = element("p", { class: "bench-note" });
  #place: Place;

  constructor(page: HTMLElement, store: Store) {
    this.#page = page;
    this.#store = store;
    this.#cards = cardsOf(page);
    this.#place = readPlace(store.load(), this.#cards[0]!.id);
    this.#bar = new Bar({ turn: (by) => this.#turn(by), tick: (done) => this.#tick(done) });
    page.append(this.#bar.element);
    this.#cards.at(-1)!.main.prepend(this.#left);
    this.#cards.at(-1)!.main.append(startOver(() => this.#startOver()));
    this.#cards[0]!.main.prepend(
      element("p", { class: "small" }, keyWords),
      startOver(() => this.#startOver()),
    );
    page.classList.add("is-turned");
    foldTrays(page);
    addEventListener("hashchange", () => this.#follow());
    document.addEventListener("keydown", (event) => this.#press(event));
    this.#open(this.#startingCard());
  }

  /** Where one comes back to what was kept, that is said, with a way to the beginning. */
  #open(at: number): void {
    this.#show(at);
    if (at === 0 || this.#hash() !== "") return;
    const first = element("a", { href: `#${this.#cards[0]!.id}` }, "To the beginning");
    this.#note.replaceChildren(`You were here, at ${this.#words(at)}. `, first);
    this.#page.prepend(this.#note);
  }

  #startOver(): void {
    this.#keep({ done: new Set() });
    this.#turnTo(0);
  }

  /** The address goes before what was kept. */
  #startingCard(): number {
    const named = cardWith(this.#cards, this.#hash());
    return named >= 0 ? named : Math.max(0, cardWith(this.#cards, this.#place.card));
  }

  #hash(): string {
    return decodeURIComponent(location.hash.slice(1));
  }

  #at(): number {
    return Math.max(
      0,
      this.#cards.findIndex(({ id }) => id === this.#place.card),
    );
  }

  #follow(): void {
    const hash = this.#hash();
    const card = cardWith(this.#cards, hash);
    if (card < 0) return;
    this.#show(card);
    if (hash === this.#cards[card]!.id) this.#goToTop(this.#cards[card]!);
    else goTo(document.getElementById(hash)!);
  }

  #turn(by: number): void {
    this.#turnTo(this.#at() + by);
  }

  #turnTo(next: number): void {
    const card = this.#cards[next];
    if (card === undefined) return;
    this.#show(next);
    replaceAddress(`#${card.id}`);
    this.#goToTop(card);
  }

  /** The focus goes to the heading, so that it is read out. */
  #goToTop({ main }: Card): void {
    const heading = main.querySelector<HTMLElement>("h2, h3") ?? main;
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
    this.#page.scrollIntoView({ block: "start", behavior: "instant" });
  }

  #tick(done: boolean): void {
    const ids = new Set(this.#place.done);
    if (done) ids.add(this.#place.card);
    else ids.delete(this.#place.card);
    this.#keep({ done: ids });
  }

  #keep(change: Partial<Place>): void {
    this.#place = { ...this.#place, ...change };
    this.#store.save(keepPlace(this.#place));
  }

  #words(at: number): string {
    const card = this.#cards[at]!;
    const steps = this.#cards.filter(({ isStep }) => isStep);
    return card.isStep ? `step ${steps.indexOf(card) + 1} of ${steps.length}` : `“${card.title}”`;
  }

  #show(at: number): void {
    this.#note.remove();
    const card = this.#cards[at]!;
    for (const part of this.#cards.flatMap(({ elements }) => elements)) {
      part.classList.toggle("is-away", !card.elements.includes(part));
    }
    this.#keep({ card: card.id });
    this.#page.classList.toggle("is-step", card.isStep);
    const steps = this.#cards.filter(({ isStep }) => isStep);
    this.#bar.show({
      words: card.isStep ? capital(this.#words(at)) : card.title,
      isFirst: at === 0,
      isLast: at === this.#cards.length - 1,
      done: card.isStep ? this.#place.done.has(card.id) : undefined,
    });
    if (at === this.#cards.length - 1) this.#tellLeft(steps);
  }

  /** On the last card: which steps were not ticked off. */
  #tellLeft(steps: readonly Card[]): void {
    const left = steps.filter(({ id }) => !this.#place.done.has(id));
    const links = left.map(({ id, title }) => element("li", {}, element("a", { href: `#${id}` }, title)));
    this.#left.replaceChildren(
      ...(left.length === 0
        ? [element("p", {}, "Every step is ticked off.")]
        : [element("h2", {}, "Not ticked off"), element("ul", {}, ...links)]),
    );
  }

  #press(event: KeyboardEvent): void {
    if (event.defaultPrevented || usesKeys(event.target as Element, event.key)) return;
    const root = document.documentElement;
    const atEnd = scrollY + innerHeight >= root.scrollHeight - 2;
    const atTop = this.#page.getBoundingClientRect().top >= -2;
    const by = turnOf(event, { atTop, atEnd });
    if (by === 0 && event.key !== "Enter") return;
    event.preventDefault();
    if (by !== 0) this.#turn(by);
    // A browser scrolls by the other keys itself.
    else scrollBy({ top: innerHeight / 2 });
  }
}

/** A button, link or box takes Enter and the space bar for itself; a field takes all keys. */
function usesKeys(target: Element, key: string): boolean {
  if (target.matches("input:not([type=checkbox]), textarea, select")) return true;
  return (key === " " || key === "Enter") && target.matches("button, a, input, summary");
}
