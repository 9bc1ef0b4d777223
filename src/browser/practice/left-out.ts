/** The second list of a practice: steps that are not in this job. */
import { t } from "../../engine/words.ts";
import type { NamedStep } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";

export class LeftOutList {
  readonly element: HTMLElement;
  readonly #items: ReadonlyMap<string, HTMLLIElement>;
  readonly #list: HTMLUListElement;
  readonly #none = element("p", { class: "small" }, t`None so far.`);

  constructor(steps: readonly NamedStep[], putBack: (step: string) => void) {
    const heading = element("h3", {}, t`Not in this job`);
    this.#list = element("ul", { class: "left-out", role: "list", "aria-label": t`Not in this job` });
    this.#items = new Map(steps.map((step) => [step.id, itemOf(step, putBack)]));
    this.element = element("div", {}, heading, this.#none, this.#list);
  }

  /** Shows these steps and no others. */
  show(steps: readonly string[]): void {
    this.#list.replaceChildren(...steps.map((step) => this.#items.get(step)!));
    this.#none.hidden = steps.length > 0;
    this.#list.hidden = steps.length === 0;
  }

  /** Brings the focus to the button of a step that is shown. */
  focusOn(step: string): void {
    this.#items.get(step)!.querySelector("button")!.focus();
  }
}

function itemOf({ id, title }: NamedStep, putBack: (step: string) => void): HTMLLIElement {
  const back = button(t`Put back`, () => putBack(id), { "aria-label": t`Put back: ${title}` });
  return element("li", { class: "left-out-row", "data-step": id }, element("span", {}, title), back);
}
