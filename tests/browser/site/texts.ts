/** All that a page says: text, and attributes that are shown or read out. */
import type { Page } from "playwright-core";

/** The text of the whole document in its order, hidden pieces too, as one string; then each attribute. */
export function textsOn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
    let text = "";
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement!;
      if (parent.closest("script, style") === null) text += `${(node as Text).data} `;
    }
    const attributes = ["alt", "aria-label", "aria-description", "title", "placeholder"];
    const shown = [...document.querySelectorAll("*")].flatMap((element) =>
      attributes.map((name) => element.getAttribute(name) ?? "").filter((value) => value !== ""),
    );
    const description = document.querySelector('meta[name="description"]')?.getAttribute("content") ?? "";
    return [text, description, ...shown];
  });
}
