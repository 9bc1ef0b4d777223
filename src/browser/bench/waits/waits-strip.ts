/** The waits that run, wherever one is: a strip with the one that ends first, which opens to all of them. */
import { plural, t } from "../../../engine/words.ts";
import { button, element } from "../../page/element.ts";
import type { Timer } from "./timers.ts";
import { setText } from "./wait-control.ts";
import { waitWords } from "./wait-words.ts";
import type { Waits } from "./waits.ts";

export class WaitsStrip {
  readonly element: HTMLElement;
  readonly #waits: Waits;
  readonly #first = element("span", {});
  readonly #more = element("small", {});
  readonly #strip = button("", () => this.#open(this.#list.hidden !== false), { class: "waits-strip" });
  readonly #list = element("ul", { class: "waits-list" });
  #shown = "";
  #rows: readonly { readonly timer: Timer; readonly words: HTMLElement }[] = [];

  constructor(waits: Waits) {
    this.#waits = waits;
    this.#strip.append(this.#first, this.#more);
    this.element = element(
      "section",
      { class: "bench-waits", "aria-label": t`Waits` },
      this.#list,
      this.#strip,
    );
    this.#open(false);
    waits.watch(() => this.#show());
  }

  /** True where it was open. */
  fold(): boolean {
    const wasOpen = !this.#list.hidden && !this.element.hidden;
    this.#open(false);
    return wasOpen;
  }

  #open(isOpen: boolean): void {
    this.#list.hidden = !isOpen;
    this.#strip.setAttribute("aria-expanded", String(isOpen));
  }

  #show(): void {
    const { timers } = this.#waits;
    this.element.hidden = timers.length === 0;
    const first = timers[0];
    if (first === undefined) {
      this.#shown = "";
      this.#open(false);
      return;
    }
    const told = this.#waits.told(first);
    setText(this.#first, waitWords(told));
    const others = timers.length - 1;
    setText(this.#more, others === 0 ? "" : plural(others, t`and ${others} more`, t`and ${others} more`));
    this.element.classList.toggle("is-over", told.left === 0);
    this.#showRows(timers);
  }

  /** Rows are made anew only where other timers run, so that the focus stays. */
  #showRows(timers: readonly Timer[]): void {
    const shown = JSON.stringify(timers.map((timer) => [timer.step, timer.ends, this.#isOver(timer)]));
    if (shown !== this.#shown) {
      this.#shown = shown;
      this.#rows = timers.map((timer) => ({ timer, words: element("a", { href: `#${timer.step}` }) }));
      this.#list.replaceChildren(
        ...this.#rows.map(({ timer, words }) => element("li", {}, words, this.#stop(timer))),
      );
    }
    for (const { timer, words } of this.#rows) setText(words, waitWords(this.#waits.told(timer)));
  }

  #isOver(timer: Timer): boolean {
    return this.#waits.told(timer).left === 0;
  }

  #stop(timer: Timer): HTMLButtonElement {
    const { number } = this.#waits.told(timer);
    const name = this.#isOver(timer)
      ? t`Put away the wait after step ${number}`
      : t`Stop the wait after step ${number}`;
    const text = this.#isOver(timer) ? t`Put away` : t`Stop`;
    return button(text, () => this.#waits.stop(timer, this.#strip), { "aria-label": name });
  }
}
