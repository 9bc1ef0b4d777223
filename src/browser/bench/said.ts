/** The line that says what was just done, with the way to take it back. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";

export interface Undo {
  readonly act: () => void;
  /** What is said then. */
  readonly words: string;
  /** Where the focus goes, since the button goes away; undefined where `act` moves it. */
  readonly focus?: HTMLElement;
}

export class Said {
  readonly element: HTMLElement;
  // It is there from the beginning, or what is put into it is not heard.
  readonly #text = element("p", { role: "status" });
  readonly #button = button(t`Undo`, () => this.#takeBack());
  #undo: Undo | undefined;

  constructor() {
    this.#button.hidden = true;
    this.element = element("div", { class: "bench-said" }, this.#text, this.#button);
  }

  say(words: string, undo?: Undo): void {
    this.#undo = undo;
    this.#text.textContent = words;
    this.#button.hidden = undo === undefined;
    this.element.classList.toggle("is-said", words !== "");
  }

  clear(): void {
    this.say("");
  }

  #takeBack(): void {
    const undo = this.#undo;
    if (undo === undefined) return;
    undo.act();
    this.say(undo.words);
    undo.focus?.focus();
  }
}
