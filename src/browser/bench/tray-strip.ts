/** On a narrow screen the tray is a strip: how much is off, and what has just changed. It opens in full. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

/** Gives each tray a strip that opens and folds them all; style sheets show it where it is wanted. */
export function foldTrays(page: HTMLElement): { readonly fold: () => boolean } {
  const trays = [...page.querySelectorAll<HTMLElement>(".step > .tray")];
  const strips = trays.map((tray) => {
    const strip = stripOf(tray);
    strip.addEventListener("click", () => show(page.classList.contains("has-folded-trays")));
    tray.prepend(strip);
    return strip;
  });
  const show = (open: boolean): void => {
    page.classList.toggle("has-folded-trays", !open);
    for (const strip of strips) strip.setAttribute("aria-expanded", String(open));
    // What scrolls must be reached by keyboard.
    for (const tray of trays) tray.tabIndex = 0;
  };
  show(false);
  return {
    fold() {
      const wasOpen = !page.classList.contains("has-folded-trays");
      show(false);
      return wasOpen;
    },
  };
}

function stripOf(tray: HTMLElement): HTMLButtonElement {
  const sum = tray.querySelector(".tray-sum")?.textContent ?? "";
  const changed = [...tray.querySelectorAll(".changed dd")].map(changeWords).filter((each) => each !== "");
  const words = element("span", { class: "tray-changes" }, changed.join(", "));
  const count = element("b", {}, t`Tray: ${sum}`);
  return element("button", { type: "button", class: "tray-strip" }, element("span", {}, count, words));
}

/** "+4 board screws" */
function changeWords(entry: Element): string {
  const change = entry.querySelector("i")?.textContent ?? "";
  const name = (entry.querySelector("span") ?? entry).cloneNode(true) as Element;
  for (const other of name.querySelectorAll("b, i, small")) other.remove();
  const words = name.textContent?.trim() ?? "";
  return change === "" ? "" : t`${change} ${words}`;
}
