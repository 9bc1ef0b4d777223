/** The tray beside the lists. On a narrow screen its one line stays at the top, and a button opens the whole. */

import type { TrayAccount } from "../../engine/procedure/tray-account.ts";
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { trayView } from "./tray-view.ts";
import { trayWords } from "./words.ts";

export class TrayPanel {
  readonly element: HTMLElement;
  readonly #line = element("p", { class: "run-line" });
  readonly #place = element("div", { class: "run-tray-place", id: "run-tray" });
  readonly #fold = button("", () => this.#open(this.element.classList.contains("is-folded")), {
    class: "run-fold",
    "aria-controls": "run-tray",
  });

  constructor() {
    const bar = element("div", { class: "run-bar" }, this.#line, this.#fold);
    this.element = element("section", { class: "run-tray", "aria-label": t`Tray` }, bar, this.#place);
    this.#open(false);
  }

  show(account: TrayAccount, done: number, total: number): void {
    this.#line.replaceChildren(element("b", {}, t`${done} of ${total}`), t` done; ${trayWords(account)}`);
    const caption = done === 0 ? t`On the tray at the start` : t`On the tray after your step ${done}`;
    this.#place.replaceChildren(trayView(account, caption));
  }

  #open(open: boolean): void {
    this.element.classList.toggle("is-folded", !open);
    this.#fold.textContent = open ? t`Fold` : t`Tray`;
    this.#fold.setAttribute("aria-expanded", String(open));
  }
}
