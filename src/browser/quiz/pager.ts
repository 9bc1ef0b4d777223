/** All questions on one page, or one at a time: a switch, and the way from one to the next. */
import { t } from "../../engine/words.ts";
import { button, element, goTo } from "../page/element.ts";
import { fieldsOf, type Store } from "../page/store.ts";

export class Pager {
  readonly element: HTMLElement;
  /** Stands below the questions. */
  readonly steps: HTMLElement;
  readonly #store: Store;
  readonly #single = element("input", { type: "checkbox", id: "one-at-a-time" });
  readonly #where = element("span", { class: "pager-where", role: "status" });
  readonly #back = button(t`Question before`, () => this.#turn(-1));
  readonly #on = button(t`Next question`, () => this.#turn(1));
  #roots: readonly HTMLElement[] = [];
  #at = 0;

  constructor(store: Store) {
    this.#store = store;
    const { single, at } = fieldsOf(store.load());
    this.#single.checked = single === true;
    if (typeof at === "number" && Number.isInteger(at) && at >= 0) this.#at = at;
    this.#single.addEventListener("change", () => this.#show());
    this.element = element(
      "p",
      { class: "pager-switch" },
      element("label", { for: "one-at-a-time" }, this.#single, t` One question at a time`),
    );
    this.steps = element("div", { class: "actions pager" }, this.#back, this.#on, this.#where);
  }

  /** The questions of a paper, in order; all others stay hidden. */
  page(roots: readonly HTMLElement[], from = this.#at): void {
    this.#roots = roots;
    this.#at = Math.min(from, Math.max(0, roots.length - 1));
    this.#show();
  }

  /** Brings a question into view. */
  turnTo(root: HTMLElement): void {
    const at = this.#roots.indexOf(root);
    if (at < 0) return;
    this.#at = at;
    this.#show();
  }

  #turn(by: number): void {
    this.#at = Math.min(Math.max(0, this.#at + by), this.#roots.length - 1);
    this.#show();
    goTo(this.#roots[this.#at]!);
  }

  #show(): void {
    const single = this.#single.checked;
    for (const [at, root] of this.#roots.entries())
      root.classList.toggle("is-away", single && at !== this.#at);
    this.steps.hidden = !single;
    this.#back.disabled = this.#at === 0;
    this.#on.disabled = this.#at === this.#roots.length - 1;
    this.#where.textContent = single ? t`Question ${this.#at + 1} of ${this.#roots.length}` : "";
    this.#store.save({ single, at: this.#at });
  }
}
