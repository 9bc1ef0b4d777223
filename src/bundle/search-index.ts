/** Builds the search index from the site's documents. */
import { fileOf, folderOf } from "../model/address.ts";
import type { SearchData, SearchPage, SearchPlace } from "../model/search-data.ts";
import type { SearchDocument } from "../model/site.ts";
import { indexPages, type PageTexts } from "./page-index.ts";

/**
 * The pages, and an index of them over titles, headings and terms. Which of its places answers best is found from the
 * headings and names of the page, so that the index holds each word once a page. O(words · log words).
 */
export function buildSearch(documents: readonly SearchDocument[]): SearchData {
  const groups = groupByPage(documents);
  const names = [...new Set(documents.flatMap(({ terms }) => terms))];
  const numbers = new Map(names.map((name, number) => [name, number]));
  return {
    pages: groups.map((group) => pageOf(group, numbers)),
    names,
    index: indexPages(groups.map(fieldsOf)),
  };
}

const fieldsOf = (group: readonly SearchDocument[]): PageTexts => ({
  title: group[0]!.title,
  headings: group.map(({ heading }) => heading),
  terms: [...new Set(group.flatMap(({ terms }) => terms))],
});

/** The documents of each page, the page's own first; pages in the order in which they first appear. */
function groupByPage(documents: readonly SearchDocument[]): SearchDocument[][] {
  const pages = new Map<string, SearchDocument[]>();
  for (const document of documents) {
    const folder = folderOf(document.address);
    const group = pages.get(folder);
    if (group === undefined) pages.set(folder, [document]);
    else if (document.heading === "") group.unshift(document);
    else group.push(document);
  }
  return [...pages.values()].map(withPageItself);
}

/** A page that was given by its places alone gets a document of its own. */
function withPageItself(group: SearchDocument[]): SearchDocument[] {
  const first = group[0]!;
  return first.heading === "" ? group : [{ ...first, heading: "", terms: [] }, ...group];
}

/** A name stands at the first place on its page that bears it: that is where a search for it leads. */
function pageOf([page, ...places]: SearchDocument[], numbers: ReadonlyMap<string, number>): SearchPage {
  const seen = new Set<string>();
  const isNew = (name: string) => !seen.has(name) && seen.add(name);
  const placeOf = ({ heading, address, terms }: SearchDocument): SearchPlace => [
    heading,
    address.at ?? "",
    terms.filter(isNew).map((name) => numbers.get(name)!),
  ];
  return [page!.address.kind, fileOf(page!.address), page!.title, places.map(placeOf)];
}
