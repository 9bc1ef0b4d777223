import { t } from "../../engine/words.ts";
import { fieldsOf, type Store } from "../page/store.ts";

/** What is left out, not what is chosen, so that a sheet that is new is printed. */
interface Kept {
  readonly paper: string | undefined;
  readonly leftOut: readonly string[];
}

/** The choice of sheets and paper. It is kept for all modules; the style sheets do the rest by what it marks. */
export class PaperChoice {
  readonly #place: HTMLElement;
  readonly #store: Store;
  readonly #print: HTMLButtonElement;

  constructor(place: HTMLElement, store: Store) {
    this.#place = place;
    this.#store = store;
    this.#print = place.querySelector("button")!;
    this.#show(read(store.load()));
    place.addEventListener("change", () => this.#changed());
    this.#print.addEventListener("click", () => {
      if (this.#print.getAttribute("aria-disabled") !== "true") print();
    });
    place.hidden = false;
  }

  #show({ paper, leftOut }: Kept): void {
    for (const radio of this.#inputs("paper")) if (paper !== undefined) radio.checked = radio.value === paper;
    for (const box of this.#inputs("sheet")) box.checked = !leftOut.includes(box.value);
    this.#mark();
  }

  /** What another page leaves out and this one does not have stays left out. */
  #changed(): void {
    const boxes = this.#inputs("sheet");
    const here = new Set(boxes.map(({ value }) => value));
    const others = read(this.#store.load()).leftOut.filter((sheet) => !here.has(sheet));
    const leftOut = boxes.filter(({ checked }) => !checked).map(({ value }) => value);
    const paper = this.#inputs("paper").find(({ checked }) => checked)?.value;
    this.#store.save({ paper, leftOut: [...others, ...leftOut] } satisfies Kept);
    this.#mark();
  }

  #mark(): void {
    const boxes = this.#inputs("sheet");
    for (const { value, checked } of boxes)
      for (const sheet of document.querySelectorAll(`[data-sheet="${value}"]`))
        sheet.classList.toggle("is-left-out", !checked);
    const paper = this.#inputs("paper").find(({ checked }) => checked)?.value;
    if (paper !== undefined) document.documentElement.dataset.paper = paper;
    const isNothing = boxes.length > 0 && boxes.every(({ checked }) => !checked);
    this.#print.setAttribute("aria-disabled", String(isNothing));
    this.#place.querySelector(".paper-none")!.textContent = isNothing
      ? t`No sheet is chosen: there is nothing to print.`
      : "";
  }

  #inputs(name: string): HTMLInputElement[] {
    return [...this.#place.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`)];
  }
}

function read(kept: unknown): Kept {
  const { paper, leftOut } = fieldsOf(kept);
  return {
    paper: paper === "a4" || paper === "letter" ? paper : undefined,
    leftOut: Array.isArray(leftOut) ? leftOut.filter((each) => typeof each === "string") : [],
  };
}
