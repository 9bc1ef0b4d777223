/** A quantity or a word, written as people write it. */
import type { Field } from "./field.ts";

export function writtenField(root: HTMLElement): Field {
  const input = root.querySelector<HTMLInputElement>(".number-field input")!;
  return {
    read: () => (input.value.trim() === "" ? undefined : input.value),
    write(answer) {
      input.value = typeof answer === "string" ? answer : "";
    },
    draw() {},
    close(closed) {
      input.readOnly = closed;
    },
  };
}
