/** One row of a list to be put in order. */
import { t } from "../../engine/words.ts";
import type { NamedStep } from "../../model/page-data.ts";
import { button, element } from "../page/element.ts";

export interface Row {
  readonly id: string;
  readonly element: HTMLLIElement;
  update(place: number, total: number, moved: boolean): void;
  close(closed: boolean): void;
}

/**
 * The row can have the focus: Alt with an arrow moves it, an arrow alone goes to its neighbour, Delete leaves it out where
 * that can be. At an end of the list a
 * button is marked as disabled but keeps the focus, so that nobody is thrown out of the list.
 */
export function rowOf({ id, title }: NamedStep, move: (by: number) => void, leaveOut?: () => void): Row {
  const up = button(t`Up`, () => move(-1), { "aria-label": t`Up: ${title}` });
  const down = button(t`Down`, () => move(1), { "aria-label": t`Down: ${title}` });
  const grip = element("span", { class: "arrange-grip", "aria-hidden": "true" });
  const out = leaveOut && button(t`Leave out`, leaveOut, { "aria-label": t`Leave out: ${title}` });
  const buttons = element("span", { class: "arrange-buttons" }, up, down, out);
  const words = element("span", { class: "arrange-title" }, title);
  const row = element("li", { class: "arrange-row", tabindex: "0", "data-step": id }, grip, words, buttons);
  row.addEventListener("keydown", (event) => pressKey(event, row, move, leaveOut));
  return {
    id,
    element: row,
    update(place, total, moved) {
      up.setAttribute("aria-disabled", String(place === 0));
      down.setAttribute("aria-disabled", String(place === total - 1));
      row.classList.toggle("is-moved", moved);
    },
    close(closed) {
      buttons.hidden = closed;
      grip.hidden = closed;
      if (closed) row.removeAttribute("tabindex");
      else row.tabIndex = 0;
    },
  };
}

const directions = new Map([
  ["ArrowUp", -1],
  ["ArrowDown", 1],
]);

function pressKey(
  event: KeyboardEvent,
  row: HTMLElement,
  move: (by: number) => void,
  leaveOut?: () => void,
): void {
  if (event.ctrlKey || event.metaKey || event.shiftKey) return;
  if (event.key === "Delete" && row.tabIndex === 0) leaveOut?.();
  const by = directions.get(event.key);
  if (by === undefined) return;
  event.preventDefault();
  if (event.altKey) move(by);
  else focusOn(by < 0 ? row.previousElementSibling : row.nextElementSibling);
}

function focusOn(neighbour: Element | null): void {
  if (neighbour instanceof HTMLElement) neighbour.focus();
}
