/** One field of a form: what is in it, and what is wrong with it, told beside it. */
import { element } from "../page/element.ts";

type Control = HTMLInputElement | HTMLSelectElement;

export class FieldView {
  readonly name: string;
  readonly #control: Control;
  readonly #place: HTMLElement;
  readonly #hints: string | null;

  constructor(control: Control) {
    this.name = control.name;
    this.#control = control;
    this.#place = control.closest<HTMLElement>(".sum-field")!;
    this.#hints = control.getAttribute("aria-describedby");
  }

  get value(): string {
    if (isTick(this.#control)) return this.#control.checked ? this.#control.value : "";
    return this.#control.value;
  }

  set value(value: string) {
    if (isTick(this.#control)) this.#control.checked = value !== "";
    else this.#control.value = value;
    this.#place.classList.toggle("is-blank", this.value.trim() === "");
  }

  /** Tells what is wrong, or takes it back. */
  tell(trouble: string | undefined): void {
    this.#place.querySelector(".field-trouble")?.remove();
    this.#place.classList.toggle("is-blank", this.value.trim() === "");
    if (trouble === undefined) this.#mark(null, this.#hints);
    else this.#show(trouble);
  }

  #show(trouble: string): void {
    const id = `${this.#control.id}-trouble`;
    this.#place.append(element("p", { class: "field-trouble", id }, trouble));
    this.#mark("true", [this.#hints, id].filter((each) => each !== null).join(" "));
    const fold = this.#place.closest("details");
    if (fold !== null) fold.open = true;
  }

  focus(): void {
    this.#control.focus();
  }

  /** A field that has something in it is not left folded away. */
  unfold(): void {
    const fold = this.#place.closest("details");
    if (fold !== null && this.value.trim() !== "") fold.open = true;
  }

  #mark(invalid: string | null, described: string | null): void {
    setOrRemove(this.#control, "aria-invalid", invalid);
    setOrRemove(this.#control, "aria-describedby", described);
  }
}

const isTick = (control: Control): control is HTMLInputElement => control.type === "checkbox";

function setOrRemove(target: Element, name: string, value: string | null): void {
  if (value === null) target.removeAttribute(name);
  else target.setAttribute(name, value);
}
