/** The bar at the foot of the bench view: back, where one is, next. */
import { button, element } from "../page/element.ts";

export interface BarOptions {
  readonly turn: (by: number) => void;
  /** The step shown is ticked off, or no longer. */
  readonly tick: (done: boolean) => void;
}

export interface BarState {
  readonly words: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** Undefined on a card that is no step. */
  readonly done: boolean | undefined;
}

export class Bar {
  readonly element: HTMLElement;
  readonly #back: HTMLButtonElement;
  readonly #next: HTMLButtonElement;
  readonly #words = element("span", { class: "bench-where" });
  readonly #box = element("input", { type: "checkbox" });
  readonly #label = element("label", { class: "bench-tick" }, this.#box, " Done");

  constructor({ turn, tick }: BarOptions) {
    this.#back = button("Back", () => turn(-1), { class: "bench-turn" });
    this.#next = button("Next", () => turn(1), { class: "bench-turn is-main" });
    this.#box.addEventListener("change", () => tick(this.#box.checked));
    const middle = element("div", { class: "bench-middle" }, this.#words, this.#label);
    this.element = element(
      "nav",
      { class: "bench-bar", "aria-label": "Steps" },
      this.#back,
      middle,
      this.#next,
    );
  }

  show({ words, isFirst, isLast, done }: BarState): void {
    this.#words.textContent = words;
    this.#back.setAttribute("aria-disabled", String(isFirst));
    this.#next.setAttribute("aria-disabled", String(isLast));
    this.#label.hidden = done === undefined;
    this.#box.checked = done ?? false;
  }
}
