/** Items, each with the groups to choose from. An answer is the place of a group for each item, or null. */
import type { QuestionOf } from "../../../engine/quiz/kinds.ts";
import type { Field } from "./field.ts";

export function sortField({ items }: QuestionOf<"sort">, root: HTMLElement): Field {
  const list = root.querySelector(".sorting")!;
  const rows = items.map((_, item) => list.querySelector<HTMLElement>(`[data-item="${item}"]`)!);
  const inputs = rows.map((row) => [...row.querySelectorAll("input")]);
  const chosen = (item: number): number => inputs[item]!.findIndex(({ checked }) => checked);
  return {
    read() {
      const places = items.map((_, item) => (chosen(item) < 0 ? null : chosen(item)));
      return places.every((place) => place === null) ? undefined : places;
    },
    write(answer) {
      const places: readonly unknown[] = Array.isArray(answer) ? answer : [];
      for (const [item, ofItem] of inputs.entries()) {
        for (const [place, input] of ofItem.entries()) input.checked = places[item] === place;
      }
    },
    draw(order) {
      list.append(...order.map((item) => rows[item]!));
    },
    close(closed) {
      for (const [item, { group }] of items.entries()) {
        for (const input of inputs[item]!) input.disabled = closed;
        rows[item]!.classList.toggle("is-right", closed && chosen(item) === group);
        rows[item]!.classList.toggle("is-wrong", closed && chosen(item) !== group);
      }
    },
  };
}
