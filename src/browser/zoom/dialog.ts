/** A figure as large as one wants it, before the page. */
import { language, t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { sayNumbers } from "./numbers.ts";
import { keptMiddle, nextScale, wholeWidth } from "./scale.ts";

/** Part of the window that an arrow key moves the figure by. */
const stride = 0.2;

const percent = new Intl.NumberFormat(language, { style: "percent" });

/**
 * Shows a copy of the picture, or of the picture with its numbers. `large` is the address of its widest file; without it
 * the one that is shown is taken.
 */
export function showLarge(shown: Element, large: string | undefined, from: HTMLElement): void {
  const sheet = copyOf(shown, large);
  const view = element(
    "div",
    { class: "zoom-view", tabindex: "0", role: "group", "aria-label": t`Figure` },
    sheet,
  );
  const told = element("span", { role: "status" });
  const said = element("p", { class: "zoom-said", "aria-live": "polite" });
  const hasNumbers = sheet.querySelector("[data-item]") !== null;
  sayNumbers(sheet, (text) => {
    said.textContent = text ?? t`Point at a number or press it, and what it is stands here.`;
  });
  let scale = 1;

  const whole = (): number => {
    const { width, height } = proportionsOf(shown);
    return wholeWidth(width / height, view.clientWidth, view.clientHeight);
  };
  const show = (next: number): void => {
    const [before, after] = [whole() * scale, whole() * next];
    const left = keptMiddle(view.scrollLeft, view.clientWidth, Math.max(before, view.clientWidth), after);
    const top = keptMiddle(view.scrollTop, view.clientHeight, Math.max(before, view.clientHeight), after);
    scale = next;
    sheet.style.width = `${after}px`;
    view.scrollTo({ left, top, behavior: "instant" });
    told.textContent = percent.format(scale);
  };
  const move = (x: number, y: number): void =>
    view.scrollBy({
      left: x * stride * view.clientWidth,
      top: y * stride * view.clientHeight,
      behavior: "instant",
    });

  const keys: Readonly<Record<string, () => void>> = {
    "+": () => show(nextScale(scale, 1)),
    "=": () => show(nextScale(scale, 1)),
    "-": () => show(nextScale(scale, -1)),
    "0": () => show(1),
    ArrowLeft: () => move(-1, 0),
    ArrowRight: () => move(1, 0),
    ArrowUp: () => move(0, -1),
    ArrowDown: () => move(0, 1),
  };
  const dialog = element(
    "dialog",
    { class: "zoom", "aria-label": t`Figure enlarged` },
    element(
      "div",
      { class: "zoom-bar" },
      button("−", keys["-"]!, { "aria-keyshortcuts": "-", "aria-label": t`Smaller` }),
      button("+", keys["+"]!, { "aria-keyshortcuts": "+", "aria-label": t`Larger` }),
      button(t`Whole`, keys["0"]!, { "aria-keyshortcuts": "0" }),
      told,
      button(t`Close`, () => dialog.close()),
      ...(hasNumbers ? [said] : []),
    ),
    view,
    element("p", { class: "zoom-keys" }, t`Keys: + larger, − smaller, 0 whole, arrows move, Escape closes.`),
  );
  dialog.addEventListener("keydown", (event) => {
    const act = event.ctrlKey || event.altKey || event.metaKey ? undefined : keys[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  });
  dialog.addEventListener("close", () => {
    removeEventListener("resize", again);
    dialog.remove();
    from.focus();
  });
  const again = (): void => show(scale);
  addEventListener("resize", again);
  document.body.append(dialog);
  dialog.showModal();
  show(1);
  view.focus();
}

function copyOf(shown: Element, large: string | undefined): HTMLElement {
  const copy = shown.cloneNode(true) as HTMLElement;
  const image = copy instanceof HTMLImageElement ? copy : copy.querySelector("img");
  for (const source of copy.querySelectorAll("source")) source.remove();
  if (image !== null) {
    if (large !== undefined) image.src = large;
    image.removeAttribute("loading");
  }
  copy.classList.add("zoom-sheet");
  return copy;
}

function proportionsOf(shown: Element): { readonly width: number; readonly height: number } {
  const box = shown.getBoundingClientRect();
  return box.width > 0 && box.height > 0 ? box : { width: 1, height: 1 };
}
