/** The steps still to do, as slips of which one is chosen. */
import type { NamedStep } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";

export interface SlipsOptions {
  readonly steps: readonly NamedStep[];
  readonly choose: (step: string) => void;
}

export class Slips {
  readonly element = element("ul", { class: "slips" });
  readonly #rows: ReadonlyMap<string, HTMLLIElement>;
  #said: HTMLElement | undefined;
  /** The step whose slip came into the place of the one taken out last. */
  #next: string | undefined;

  constructor({ steps, choose }: SlipsOptions) {
    this.#rows = new Map(
      steps.map((step) => [
        step.id,
        slip(step, (isAgain) => {
          if (!isAgain || this.#next !== step.id) choose(step.id);
        }),
      ]),
    );
  }

  show(order: readonly string[]): void {
    this.clear();
    this.element.replaceChildren(...order.map((step) => this.#rows.get(step)!));
  }

  /** Takes a slip out; gives the step of the one that comes into its place, or of the last; undefined where none is left. */
  takeOut(step: string): string | undefined {
    const row = this.#rows.get(step)!;
    const next = row.nextElementSibling ?? row.previousElementSibling;
    row.remove();
    this.#next = [...this.#rows].find(([, each]) => each === next)?.[0];
    return this.#next;
  }

  /** Says something below a slip, in the place of all that was said before. */
  say(step: string, words: HTMLElement): void {
    this.clear();
    const row = this.#rows.get(step)!;
    words.id = "run-refusal";
    row.append(words);
    this.#said = words;
    row.classList.add("is-refused");
    buttonOf(row).setAttribute("aria-describedby", words.id);
    row.scrollIntoView({ block: "nearest" });
  }

  clear(): void {
    // Nothing else is touched: a button taken out of the page for a moment loses the focus.
    this.#said?.remove();
    for (const row of this.#rows.values()) {
      row.classList.remove("is-refused");
      buttonOf(row).removeAttribute("aria-describedby");
    }
  }

  focus(step: string): void {
    buttonOf(this.#rows.get(step)!).focus();
  }
}

const buttonOf = (row: HTMLLIElement): HTMLButtonElement => row.querySelector("button")!;

/**
 * `isAgain` is true for the second press of a double one, which would choose the slip that has come into the place of the
 * first; so would a key that is held down.
 */
function slip({ title }: NamedStep, press: (isAgain: boolean) => void): HTMLLIElement {
  const made = button(title, () => {}, { class: "slip" });
  made.addEventListener("keydown", (event) => {
    if (event.repeat) event.preventDefault();
  });
  made.addEventListener("click", (event) => {
    press(event.detail > 1);
  });
  return element("li", {}, made);
}
