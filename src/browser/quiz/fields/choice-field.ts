/** Options to choose one or several from. An answer is places in the written order, which the inputs bear as values. */
import type { Option } from "../../../engine/quiz/choice.ts";
import type { Field } from "./field.ts";

export function choiceField(options: readonly Option[], root: HTMLElement): Field {
  const list = root.querySelector(".options")!;
  const inputs = [...list.querySelectorAll("input")];
  const input = (place: number) => inputs.find(({ value }) => value === String(place))!;
  const several = inputs[0]?.type === "checkbox";
  return {
    read() {
      const places = [...options.keys()].filter((place) => input(place).checked);
      return several ? places : places[0];
    },
    write(answer) {
      const chosen: ReadonlySet<unknown> = new Set(Array.isArray(answer) ? answer : [answer]);
      for (const place of options.keys()) input(place).checked = chosen.has(place);
    },
    draw(order) {
      list.append(...order.map((place) => input(place).closest("li")!));
    },
    close(closed) {
      for (const [place, { right }] of options.entries()) {
        const { checked } = input(place);
        const row = input(place).closest("li")!;
        input(place).disabled = closed;
        row.classList.toggle("is-right", closed && right);
        row.classList.toggle("is-wrong", closed && checked && !right);
      }
    },
  };
}
