/** Links to large pictures become buttons that show them in the page; the script for that is loaded at the first press. */
import { element } from "../page/element.ts";
import { shownBefore } from "./shown.ts";

/**
 * What the loaded script puts in place: shows what a figure holds, and gives the focus back to `from` at the end. `large`
 * is the address of the picture's widest file; without it there is only the one that the page shows.
 */
export type ShowLarge = (shown: Element, large: string | undefined, from: HTMLElement) => void;

declare global {
  var benchwrightZoom: ShowLarge | undefined;
}

/** Where the page names no script, links stay links. */
export function watchEnlarge(page: Document, load: (src: string) => Promise<void>): void {
  const src = page.documentElement.dataset.zoom;
  if (src === undefined) return;
  for (const link of page.querySelectorAll<HTMLAnchorElement>("a.enlarge")) {
    const made = element(
      "button",
      { class: "enlarge", type: "button" },
      link.dataset.button ?? link.textContent ?? "",
    );
    made.addEventListener("click", () => void show(made, link.href));
    link.replaceWith(made);
  }

  async function show(from: HTMLElement, large: string): Promise<void> {
    const shown = shownBefore(from);
    if (shown === undefined) return;
    try {
      if (globalThis.benchwrightZoom === undefined) await load(src!);
      globalThis.benchwrightZoom?.(shown, large, from);
    } catch {
      // What does not come offline: the picture by itself is what the link led to.
      location.href = large;
    }
  }
}
