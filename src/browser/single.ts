/** A module in one file: shows one part at a time, the one in which the address leads to something. Its pictures can be enlarged. */
import { shownBefore } from "./figures/shown.ts";
import { showLarge } from "./zoom/dialog.ts";

const parts = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>("[data-part]")];

/** The element that the address names; null where it names none. */
function named(): HTMLElement | null {
  try {
    return document.getElementById(decodeURIComponent(location.hash.slice(1)));
  } catch {
    return null;
  }
}

function show(chosen: HTMLElement): void {
  for (const part of parts()) part.hidden = part !== chosen;
  for (const link of document.querySelectorAll<HTMLAnchorElement>(".file-parts a")) {
    if (link.hash === `#${chosen.id}`) link.setAttribute("aria-current", "true");
    else link.removeAttribute("aria-current");
  }
}

/** Reading goes on where the link led to: at the part's beginning, or at the place in it. */
function follow(): void {
  const target = named();
  const chosen = target?.closest<HTMLElement>("[data-part]");
  if (target === null || !chosen) return;
  show(chosen);
  const place = target === chosen ? (chosen.querySelector<HTMLElement>("h1, h2") ?? chosen) : target;
  if (!place.hasAttribute("tabindex")) place.tabIndex = -1;
  place.focus({ preventScroll: true });
  target.scrollIntoView({ block: "start", behavior: "instant" });
}

/** The file holds each picture in one size, and a button beside it that does nothing without this. */
function offerEnlarging(): void {
  for (const button of document.querySelectorAll<HTMLButtonElement>("button.enlarge")) {
    const shown = shownBefore(button);
    if (shown === undefined) continue;
    button.hidden = false;
    button.addEventListener("click", () => showLarge(shown, undefined, button));
  }
}

// Before those of the parts, whose places must be in sight when they go to them.
addEventListener("hashchange", follow);
document.addEventListener("DOMContentLoaded", () => {
  document.documentElement.classList.add("has-parts");
  const [first] = parts();
  if (first !== undefined) show(first);
  follow();
  offerEnlarging();
});
