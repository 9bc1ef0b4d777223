/** What the bundler hands to the search page: the prebuilt index and the pages that its entries stand for. */
import type { PageKind } from "./address.ts";

/** A place on a page: its heading, the id of its element, and the names that first stand there, by their place in `names`. */
export type SearchPlace = readonly [heading: string, at: string, names: readonly number[]];

/** A page, and the places on it in the written order. `file` is relative to the site. */
export type SearchPage = readonly [
  kind: PageKind,
  file: string,
  title: string,
  places: readonly SearchPlace[],
];

export interface SearchData {
  readonly pages: readonly SearchPage[];
  /** Names of tools, substances, hazards, parts, fasteners and threads, each once. */
  readonly names: readonly string[];
  /** As lunr serialises it; refers to pages by their place in `pages`. */
  readonly index: object;
}

/** The global variable in which the data's script leaves it: works from disk, where nothing can be fetched. */
export type SearchGlobal = { benchwrightSearch?: SearchData };
