/** The bar at the foot of the bench view: where one is, back, a tick, next. */
import { t, tIn } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import type { Deck } from "./deck.ts";
import type { Keeper } from "./keeper.ts";
import { withId } from "./place.ts";
import { numberOf, whereWords } from "./progress.ts";
import type { Said } from "./said.ts";

export class Bar {
  readonly element: HTMLElement;
  readonly #deck: Deck;
  readonly #keeper: Keeper;
  readonly #said: Said;
  readonly #box = element("input", { type: "checkbox" });

  constructor(deck: Deck, keeper: Keeper, said: Said) {
    this.#deck = deck;
    this.#keeper = keeper;
    this.#said = said;
    const back = button(t`Back`, () => deck.turn(-1), { class: "bench-turn" });
    const next = button(tIn("turns to the next step")`Next`, () => deck.turn(1), {
      class: "bench-turn is-main",
    });
    const where = element("p", { class: "bench-where" });
    const tick = element("label", { class: "bench-tick" }, this.#box, t`Done`);
    this.#box.addEventListener("change", () => this.#tick(this.#box.checked));
    this.element = element(
      "nav",
      { class: "bench-bar", "aria-label": t`Steps` },
      where,
      back,
      element("div", { class: "bench-middle" }, tick),
      next,
    );
    keeper.watch((place) => {
      const { card } = deck;
      where.textContent = whereWords(deck.cards, place);
      back.setAttribute("aria-disabled", String(deck.at === 0));
      next.setAttribute("aria-disabled", String(deck.at === deck.cards.length - 1));
      tick.hidden = !card.isStep;
      this.#box.checked = place.done.has(card.id);
    });
  }

  /** Ticks the step shown off, or takes the tick back, as a key does it. */
  toggle(): void {
    if (this.#deck.card.isStep) this.#tick(!this.#box.checked);
  }

  #tick(isDone: boolean): void {
    const { id } = this.#deck.card;
    const number = numberOf(this.#deck.cards, id);
    const ticked = t`Step ${number} ticked off.`;
    const open = t`Step ${number} is open again.`;
    const set = (done: boolean): void =>
      this.#keeper.change({ done: withId(this.#keeper.place.done, id, done) });
    set(isDone);
    this.#said.say(isDone ? ticked : open, {
      act: () => set(!isDone),
      words: isDone ? open : ticked,
      focus: this.#box,
    });
  }
}
