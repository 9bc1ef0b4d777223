/** On a narrow screen the tray is folded to a few lines: what lies on it, without where. */
import { button } from "../page/element.ts";

/** Gives each tray a button that opens and folds them all; style sheets show it where it is wanted. */
export function foldTrays(page: HTMLElement): void {
  const trays = [...page.querySelectorAll<HTMLElement>(".step > .tray")];
  const buttons = trays.map((tray) => {
    const made = button("", () => show(page.classList.contains("has-folded-trays")), { class: "tray-fold" });
    tray.querySelector("figcaption")?.append(made);
    // It scrolls, so it must be reached by keyboard.
    tray.tabIndex = 0;
    return made;
  });
  const show = (open: boolean): void => {
    page.classList.toggle("has-folded-trays", !open);
    for (const made of buttons) {
      made.textContent = open ? "Fold" : "Open";
      made.setAttribute("aria-expanded", String(open));
    }
  };
  show(false);
}
