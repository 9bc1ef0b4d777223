/** The results as a list of links. */
import type { SearchPageData } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import type { Hit, Hits } from "./hits.ts";

export function resultItems(hits: readonly Hit[], { root, kinds }: SearchPageData): HTMLLIElement[] {
  return hits.map(({ href, title, kind, heading, isRow, found }) => {
    const link = element("a", { href: `${root}${href}` }, heading === "" ? title : heading);
    const where =
      heading === "" ? kinds[kind] : isRow ? `parts list of ${title}` : `in ${title}, ${kinds[kind]}`;
    const why =
      found.length === 0 ? [] : [element("span", { class: "why" }, `Found there: ${found.join("; ")}`)];
    return element("li", {}, link, " ", element("span", {}, where), ...why);
  });
}

/** "3 pages found"; how many are shown where that is not all. */
export function countWords({ total, shown }: Hits): string {
  if (total === 0) return "Nothing found. Try fewer or other words.";
  const pages = total === 1 ? "1 page found" : `${total} pages found`;
  return shown.length < total ? `${pages}; these are the best ${shown.length}` : pages;
}
