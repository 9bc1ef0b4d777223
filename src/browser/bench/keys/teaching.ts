/** "Keys and foot switch": which keys turn the page, and teaching others by pressing them. */
import { t } from "../../../engine/words.ts";
import { button, element } from "../../page/element.ts";
import type { Device } from "../device.ts";
import { type Taught, type TaughtRole, taughtRoles } from "./deeds.ts";
import { keyName, pageKeyWords, roleWords } from "./key-words.ts";
import { teach, teachable, unteach } from "./taught.ts";

export function keysPart(device: Device): HTMLElement {
  const told = element("p", { role: "status" });
  const showAll = (): void => {
    for (const row of rows) row.show();
  };
  const rows = taughtRoles.map((role) => new Row(role, device, told, showAll));
  showAll();
  return element(
    "details",
    {},
    element("summary", {}, t`Keys and foot switch`),
    element("ul", {}, ...pageKeyWords.map((words) => element("li", {}, words))),
    element("ul", { class: "bench-taught" }, ...rows.map((row) => row.element)),
    told,
  );
}

class Row {
  readonly element: HTMLElement;
  readonly #role: TaughtRole;
  readonly #device: Device;
  readonly #told: HTMLElement;
  readonly #showAll: () => void;
  readonly #key = element("b", {});
  readonly #teach: HTMLButtonElement;
  readonly #clear: HTMLButtonElement;
  #listening: AbortController | undefined;

  constructor(role: TaughtRole, device: Device, told: HTMLElement, showAll: () => void) {
    this.#role = role;
    this.#device = device;
    this.#told = told;
    this.#showAll = showAll;
    const words = roleWords[role];
    this.#teach = button(t`Teach a key`, () => this.#listen(), { "aria-label": t`Teach a key: ${words}` });
    this.#clear = button(t`Clear`, () => this.#forget(), { "aria-label": t`Clear the key: ${words}` });
    this.element = element(
      "li",
      {},
      element("p", {}, words),
      this.#key,
      element("div", { class: "bench-buttons" }, this.#teach, this.#clear),
    );
  }

  show(): void {
    const key = this.#device.settings.keys[this.#role];
    this.#key.textContent = key === undefined ? t`No key of your own` : keyName(key);
    this.#clear.hidden = key === undefined;
  }

  /** The next key that is pressed, before anything else gets it. */
  #listen(): void {
    this.#listening?.abort();
    const listening = new AbortController();
    this.#listening = listening;
    const { signal } = listening;
    this.#told.textContent = t`Press the key or the foot switch now. Escape leaves it as it is.`;
    this.element.classList.add("is-listening");
    signal.addEventListener("abort", () => this.element.classList.remove("is-listening"));
    document.addEventListener("keydown", (event) => this.#hear(event), { capture: true, signal });
    this.#teach.addEventListener("blur", () => this.#leave(), { signal });
  }

  #hear(event: KeyboardEvent): void {
    if (["Shift", "Control", "Alt", "Meta", "AltGraph"].includes(event.key)) return;
    // Tab moves on as ever; the focus leaves, and with it the listening.
    if (event.key === "Tab") return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === "Escape") this.#leave();
    else this.#learn(teachable(event));
  }

  #learn(key: string | undefined): void {
    if (key === undefined) {
      this.#told.textContent = t`That key can’t be taught. Press another, or Escape.`;
      return;
    }
    this.#listening?.abort();
    this.#save(teach(this.#device.settings.keys, this.#role, key));
    this.#told.textContent = t`${keyName(key)} is learnt.`;
  }

  #leave(): void {
    this.#listening?.abort();
    this.#told.textContent = t`No key was taught.`;
  }

  #forget(): void {
    this.#save(unteach(this.#device.settings.keys, this.#role));
    this.#told.textContent = t`The key is cleared.`;
    this.#teach.focus();
  }

  #save(keys: Taught): void {
    this.#device.change({ keys });
    this.#showAll();
  }
}
