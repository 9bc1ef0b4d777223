/** The results as a list of links. */
import { plural, t } from "../../engine/words.ts";
import type { SearchPageData } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import type { Hit, Hits } from "./hits.ts";

export function resultItems(hits: readonly Hit[], { root, kinds }: SearchPageData): HTMLLIElement[] {
  return hits.map(({ href, title, kind, heading, isRow, found }) => {
    const link = element("a", { href: `${root}${href}` }, heading === "" ? title : heading);
    const where =
      heading === "" ? kinds[kind] : isRow ? t`parts list of ${title}` : t`in ${title}, ${kinds[kind]!}`;
    const why =
      found.length === 0 ? [] : [element("span", { class: "why" }, t`Found there: ${found.join("; ")}`)];
    return element("li", {}, link, " ", element("span", {}, where), ...why);
  });
}

/** "3 pages found"; how many are shown where that is not all. */
export function countWords({ total, shown }: Hits): string {
  if (total === 0) return t`Nothing found. Try fewer or other words.`;
  const pages = plural(total, t`${total} page found`, t`${total} pages found`);
  return shown.length < total ? t`${pages}; these are the best ${shown.length}` : pages;
}
