/** The results as lists of links, a list for each kind. */
import { type Marker, markerFor } from "../../engine/search/marks.ts";
import { plural, t } from "../../engine/words.ts";
import type { SearchPageData } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import { type Group, groupNames } from "./groups.ts";
import type { Hit, Hits } from "./hits.ts";

/** The kind of the best hit comes first. */
export function resultGroups({ shown, said, asked }: Hits, data: SearchPageData): HTMLElement[] {
  const marker = markerFor(asked.ways.flat(2));
  const groups = new Map<Group, Hit[]>();
  for (const hit of [...shown, ...said]) groups.set(hit.group, [...(groups.get(hit.group) ?? []), hit]);
  return [...groups].map(([group, hits]) =>
    element(
      "section",
      { class: "found-group" },
      element("h2", {}, groupNames[group]),
      element("ol", {}, ...hits.map((hit) => resultItem(hit, marker, data))),
    ),
  );
}

function resultItem(hit: Hit, marker: Marker, { root, kinds }: SearchPageData): HTMLLIElement {
  const { href, title, kind, heading, isRow, found, sentence } = hit;
  const link = element("a", { href: `${root}${href}` }, ...marked(heading === "" ? title : heading, marker));
  const where =
    heading === "" ? kinds[kind] : isRow ? t`parts list of ${title}` : t`in ${title}, ${kinds[kind]!}`;
  const why =
    sentence !== undefined
      ? [element("q", { class: "why" }, ...marked(sentence, marker))]
      : found.length > 0
        ? [element("span", { class: "why" }, ...marked(t`Found there: ${found.join("; ")}`, marker))]
        : [];
  return element("li", {}, link, " ", element("span", {}, where), ...why);
}

const marked = (text: string, marker: Marker): (Node | string)[] =>
  marker.pieces(text).map(([piece, isFound]) => (isFound ? element("mark", {}, piece) : piece));

/** "3 pages found"; how many are shown where that is not all, and how many more places say it in their text. */
export function countWords({ total, shown, saidBy, said }: Hits): string {
  if (total + saidBy === 0) return t`Nothing found. Try fewer or other words.`;
  const pages = plural(total, t`${total} page found`, t`${total} pages found`);
  const best = shown.length < total ? t`${pages}; these are the best ${shown.length}` : pages;
  if (saidBy === 0) return `${best}.`;
  const more = plural(
    saidBy,
    t`${saidBy} place says it in its text`,
    t`${saidBy} places say it in their text`,
  );
  return `${best}. ${said.length < saidBy ? t`${more}; these are the best ${said.length}` : more}.`;
}

/** What was looked for in place of what was typed, and beside it. */
export function askedWords({ asked }: Hits): string[] {
  const names = (words: readonly string[]) => words.map((word) => t`“${word}”`).join(", ");
  return [
    ...asked.mended.map(({ typed, meant }) => t`Nothing for “${typed}”; shown for ${names(meant)}.`),
    ...[...new Set(asked.others.map(({ asked: name }) => name))].map((name) => {
      const others = asked.others.filter((other) => other.asked === name);
      return t`Also shown for “${name}”: ${names(others.map(({ instead }) => instead))}.`;
    }),
  ];
}
