/** A list to be put in order: by buttons, by keys, by dragging. */
import { t } from "../../engine/words.ts";
import type { NamedStep } from "../../model/page-data.ts";
import type { Announce } from "../page/announcer.ts";
import { element } from "../page/element.ts";
import { type Dragging, dragRows } from "./drag.ts";
import { glide } from "./glide.ts";
import { moveItem, placeWords } from "./order.ts";
import { type Row, rowOf } from "./row.ts";

export interface ArrangeOptions {
  /** What the list is called. */
  readonly label: string;
  readonly steps: readonly NamedStep[];
  readonly announce: Announce;
  /** Someone has moved a step. */
  readonly changed: () => void;
  /** Someone wants a step left out; where nothing can be left out, undefined. */
  readonly leaveOut?: (step: string) => void;
}

export class ArrangeList implements Dragging {
  readonly element: HTMLOListElement;
  readonly #options: ArrangeOptions;
  readonly #rows: ReadonlyMap<string, Row>;
  #order: readonly string[];
  #closed = false;

  constructor(options: ArrangeOptions) {
    const { label, steps, leaveOut } = options;
    this.element = element("ol", { class: "arrange", role: "list", "aria-label": label });
    this.#options = options;
    this.#rows = new Map(
      steps.map((step) => [
        step.id,
        rowOf(step, (by) => this.#moveBy(step.id, by), leaveOut && (() => leaveOut(step.id))),
      ]),
    );
    this.#order = steps.map(({ id }) => id);
    this.#show(this.#order, undefined);
    dragRows(this.element, this);
  }

  order(): readonly string[] {
    return this.#order;
  }

  /** Shows the steps of an order and no others; `moved` is marked as the one that moved. Says nothing. */
  place(order: readonly string[], moved?: string): void {
    glide(this.#elements(), () => this.#show(order, moved));
    if (moved !== undefined) this.#rows.get(moved)!.element.scrollIntoView({ block: "nearest" });
  }

  /** No step can be moved any more, or they can again. */
  close(closed: boolean): void {
    this.#closed = closed;
    this.element.classList.toggle("is-closed", closed);
    for (const row of this.#rows.values()) row.close(closed);
  }

  mayDrag(): boolean {
    return !this.#closed;
  }

  move(id: string, to: number): void {
    this.#show(moveItem(this.#order, this.#order.indexOf(id), to), id);
  }

  back(order: readonly string[]): void {
    this.#show(order, undefined);
  }

  drop(id: string): void {
    this.#rows.get(id)!.element.focus({ preventScroll: true });
    this.#moved(id);
  }

  /** Brings the focus to a step that is shown. */
  focusOn(id: string): void {
    this.#rows.get(id)!.element.focus();
  }

  #moveBy(id: string, by: number): void {
    if (this.#closed) return;
    const from = this.#order.indexOf(id);
    const to = from + by;
    if (to < 0 || to >= this.#order.length) {
      this.#options.announce(t`${this.#title(id)}: already ${by < 0 ? t`first` : "last"}`);
      return;
    }
    this.place(moveItem(this.#order, from, to), id);
    this.#moved(id);
  }

  #moved(id: string): void {
    this.#options.announce(placeWords(this.#title(id), this.#order.indexOf(id), this.#order.length));
    this.#options.changed();
  }

  #title(id: string): string {
    return this.#options.steps.find((step) => step.id === id)?.title ?? id;
  }

  #elements(): HTMLElement[] {
    return [...this.#rows.values()].map((row) => row.element);
  }

  #show(order: readonly string[], moved: string | undefined): void {
    this.#order = order;
    const rows = order.map((id) => this.#rows.get(id)!);
    for (const { id, element: row } of this.#rows.values()) if (!order.includes(id)) row.remove();
    const still = rows.find(({ id }) => id === moved) ?? rows[0];
    if (still !== undefined) arrangeAround(this.element, rows, still);
    for (const [place, row] of rows.entries()) row.update(place, rows.length, row.id === moved);
  }
}

/** Puts rows in order without taking the moved one out of the document, which would take the focus from it. */
function arrangeAround(list: HTMLOListElement, rows: readonly Row[], moved: Row): void {
  if (moved.element.parentNode === null) list.append(moved.element);
  const at = rows.indexOf(moved);
  for (const row of rows.slice(0, at)) list.insertBefore(row.element, moved.element);
  list.append(...rows.slice(at + 1).map((row) => row.element));
}
