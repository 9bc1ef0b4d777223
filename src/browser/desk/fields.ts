/** Fields of the desk's forms. */
import { element } from "../page/element.ts";

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly text: string;
  /** Why it can't be chosen, as a sentence; undefined where it can. */
  readonly whyNot?: string | undefined;
}

/** A group of which one is chosen; none at first. */
export function radios<Value extends string>(
  name: string,
  legend: string,
  choices: readonly Choice<Value>[],
): { element: HTMLFieldSetElement; value: () => Value | undefined; set: (value: Value | undefined) => void } {
  const inputs = choices.map(({ value, whyNot }) => {
    const id = `${name}-${slugOf(value)}`;
    const reason = whyNot === undefined ? {} : { disabled: true, "aria-describedby": `${id}-why` };
    return element("input", { type: "radio", name, value, id, ...reason });
  });
  const lines = choices.map(({ text, whyNot }, at) => choiceLine(inputs[at]!, text, whyNot));
  return {
    element: element("fieldset", { class: "choices" }, element("legend", {}, legend), ...lines),
    value: () => choices[inputs.findIndex(({ checked }) => checked)]?.value,
    set: (value) => {
      for (const [at, input] of inputs.entries()) input.checked = choices[at]!.value === value;
    },
  };
}

/** A box to tick with its label; the id is that of the box. */
export function tickBox(
  id: string,
  ...text: readonly (Node | string)[]
): { element: HTMLElement; input: HTMLInputElement } {
  const input = element("input", { type: "checkbox", id });
  return { element: labelled(input, ...text), input };
}

function choiceLine(input: HTMLInputElement, text: string, whyNot: string | undefined): HTMLElement {
  const line = labelled(input, text);
  if (whyNot !== undefined) line.append(element("small", { id: `${input.id}-why` }, whyNot));
  return line;
}

const labelled = (input: HTMLInputElement, ...text: readonly (Node | string)[]): HTMLElement =>
  element("p", { class: "choice" }, input, element("label", { for: input.id }, ...text));

const slugOf = (value: string): string => value.replaceAll(/[^a-z0-9]+/gi, "-");

/** Lines of text with a label above. */
export function wordsField(id: string, label: string): { element: HTMLElement; input: HTMLTextAreaElement } {
  const input = element("textarea", { id, rows: "3", maxlength: "1000" });
  return { element: element("p", { class: "field" }, element("label", { for: id }, label), input), input };
}

/** One line with a label above. */
export function lineField(
  id: string,
  label: string,
  attributes: Readonly<Record<string, string>> = {},
): { element: HTMLElement; input: HTMLInputElement } {
  const input = element("input", { type: "text", id, ...attributes });
  return { element: element("p", { class: "field" }, element("label", { for: id }, label), input), input };
}

/** A form that is handled here. */
export function form(submit: () => void, ...content: readonly (Node | string)[]): HTMLFormElement {
  const made = element("form", { class: "desk-form" }, ...content);
  made.noValidate = true;
  made.addEventListener("submit", (event) => {
    event.preventDefault();
    submit();
  });
  return made;
}
