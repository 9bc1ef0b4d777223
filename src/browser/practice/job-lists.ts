/** The lists of a practice: the order of the job, and below it what is not in the job, where something may be left out. */
import { t } from "../../engine/words.ts";
import type { NamedStep } from "../../model/page-data.ts";
import { ArrangeList } from "../arranging/arrange-list.ts";
import { placeWords } from "../arranging/order.ts";
import type { Announce } from "../page/announcer.ts";
import { counted } from "../page/words.ts";
import { LeftOutList } from "./left-out.ts";

export interface JobOptions {
  /** What the list of the order is called. */
  readonly label: string;
  /** Those that belong to the job, and those that do not. */
  readonly steps: readonly NamedStep[];
  readonly mayLeaveOut: boolean;
  readonly announce: Announce;
  /** Someone has moved a step, or left one out or put one back. */
  readonly changed: () => void;
}

export class JobLists {
  readonly #options: JobOptions;
  readonly #order: ArrangeList;
  readonly #leftOut: LeftOutList | undefined;

  constructor(options: JobOptions) {
    const { label, steps, mayLeaveOut, announce, changed } = options;
    this.#options = options;
    const leaveOut = mayLeaveOut ? { leaveOut: (step: string) => this.#leaveOut(step) } : {};
    this.#order = new ArrangeList({ label, steps, announce, changed, ...leaveOut });
    this.#leftOut = mayLeaveOut ? new LeftOutList(steps, (step) => this.#putBack(step)) : undefined;
  }

  elements(): HTMLElement[] {
    return [this.#order.element, ...(this.#leftOut === undefined ? [] : [this.#leftOut.element])];
  }

  order(): readonly string[] {
    return this.#order.order();
  }

  /** Shows an order of some of the steps; the others are left out. Says nothing. */
  place(order: readonly string[], moved?: string): void {
    this.#order.place(order, moved);
    this.#leftOut?.show(this.#options.steps.map(({ id }) => id).filter((id) => !order.includes(id)));
  }

  #leaveOut(step: string): void {
    this.place(this.order().filter((each) => each !== step));
    this.#leftOut!.focusOn(step);
    const left = counted(this.order().length, "step");
    this.#options.announce(t`${this.#title(step)}: not in this job; ${left} left in your order`);
    this.#options.changed();
  }

  #putBack(step: string): void {
    this.place([...this.order(), step], step);
    this.#order.focusOn(step);
    const { length } = this.order();
    this.#options.announce(placeWords(this.#title(step), length - 1, length));
    this.#options.changed();
  }

  #title(step: string): string {
    return this.#options.steps.find(({ id }) => id === step)?.title ?? step;
  }
}
