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

/** What a row says counts as a heading: a thread is found in the parts list before it is in a sentence. */
const fieldsOf = (group: readonly SearchDocument[]): PageTexts => ({
  title: group[0]!.title,
  headings: group.flatMap(({ heading, terms, isRow }) => (isRow ? terms : [heading])),
  terms: [...new Set(group.flatMap(({ terms, isRow }) => (isRow ? [] : terms)))],
});

/** The documents of each page, the page's own first; pages in the order in which they first appear. */
export function groupByPage(documents: readonly SearchDocument[]): SearchDocument[][] {
  const pages = new Map<string, SearchDocument[]>();
  for (const document of documents) {
    const folder = folderOf(document.address);
    const group = pages.get(folder);
    if (group === undefined) pages.set(folder, [document]);
    else if (isPageItself(document)) group.unshift(document);
    else group.push(document);
  }
  return [...pages.values()].map(withPageItself);
}

const isPageItself = ({ heading, isRow }: SearchDocument): boolean => heading === "" && !isRow;

/** A page that was given by its places alone gets a document of its own. */
function withPageItself(group: SearchDocument[]): SearchDocument[] {
  const { address, title } = group[0]!;
  if (isPageItself(group[0]!)) return group;
  return [{ address: { kind: address.kind, id: address.id }, title, heading: "", terms: [] }, ...group];
}

/**
 * A name stands at the first place on its page that bears it: that is where a search for it leads. Rows say what they say,
 * and nothing else on the page says it for them.
 */
function pageOf([page, ...others]: SearchDocument[], numbers: ReadonlyMap<string, number>): SearchPage {
  const rows = others.filter(({ isRow }) => isRow);
  const seen = new Set<string>(rows.flatMap(({ terms }) => terms));
  const isNew = (name: string) => !seen.has(name) && seen.add(name);
  const numbered = (terms: readonly string[]) => terms.map((name) => numbers.get(name)!);
  const placeOf = ({ heading, address, terms }: SearchDocument): SearchPlace => [
    heading,
    address.at ?? "",
    numbered(terms.filter(isNew)),
  ];
  const places = others.filter(({ isRow }) => !isRow).map(placeOf);
  const rest = placeOf(page!);
  return [
    ...([page!.address.kind, fileOf(page!.address), page!.title] as const),
    rest[2].length === 0 ? places : [...places, rest],
    rows.map(({ address, terms }) => [numbered(terms), address.at ?? ""]),
  ];
}
