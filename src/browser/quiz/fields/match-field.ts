/** Items, each with a list of choices. An answer is the place of a choice for each item, or null. */
import type { QuestionOf } from "../../../engine/quiz/kinds.ts";
import { element } from "../../page/element.ts";
import type { Field } from "./field.ts";

export function matchField({ items, choices }: QuestionOf<"match">, root: HTMLElement): Field {
  const selects = [...root.querySelectorAll<HTMLSelectElement>(".pairs select")];
  const inFull = selects.map(() => element("span", { class: "pair-chosen", "aria-hidden": "true" }));
  for (const [item, select] of selects.entries()) {
    select.previousElementSibling!.before(inFull[item]!);
    select.addEventListener("change", show);
  }

  /** What was chosen, once more beside its field: for paper, and where the field is too narrow for it. */
  function show(): void {
    for (const [item, { value }] of selects.entries())
      inFull[item]!.textContent = value === "" ? "" : choices[Number(value)]!;
  }

  return {
    read() {
      const places = selects.map(({ value }) => (value === "" ? null : Number(value)));
      return places.every((place) => place === null) ? undefined : places;
    },
    write(answer) {
      const places: readonly unknown[] = Array.isArray(answer) ? answer : [];
      for (const [item, select] of selects.entries()) {
        const place = places[item];
        select.value = typeof place === "number" && choices[place] !== undefined ? String(place) : "";
      }
      show();
    },
    draw(order) {
      for (const select of selects) {
        const options = [...select.options].filter(({ value }) => value !== "");
        const option = (place: number) => options.find(({ value }) => value === String(place))!;
        select.append(...order.map(option));
      }
    },
    close(closed) {
      for (const [item, select] of selects.entries()) {
        const right = select.value === String(items[item]!.choice);
        select.disabled = closed;
        select.closest("li")!.classList.toggle("is-right", closed && right);
        select.closest("li")!.classList.toggle("is-wrong", closed && !right);
      }
    },
  };
}
