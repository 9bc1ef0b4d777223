/** What the bundler hands to the search page: the prebuilt index and the pages that its entries stand for. */
import type { PageKind } from "./address.ts";

/** A place on a page: its heading, the id of its element, and the names that first stand there, by their place in `names`. */
export type SearchPlace = readonly [heading: string, at: string, names: readonly number[]];

/** A row of a parts list: what it says, by its place in `names`, and the id of its element. */
export type SearchRow = readonly [names: readonly number[], at: string];

/**
 * A page, and the places on it in the written order; what stands nowhere but on the page itself is a place without heading
 * and id. `file` is relative to the site.
 */
export type SearchPage = readonly [
  kind: PageKind,
  file: string,
  title: string,
  places: readonly SearchPlace[],
  rows: readonly SearchRow[],
];

export interface SearchData {
  readonly pages: readonly SearchPage[];
  /** Names of tools, substances, hazards, parts, fasteners and threads, cells and summaries, each once. */
  readonly names: readonly string[];
  /** Refers to pages by their place in `pages`. */
  readonly index: PackedIndex;
  /** Undefined where only names are to be found. */
  readonly prose?: ProseData;
}

/**
 * Where the shards of the prose are: names of scripts below `proseFolder`. Sections are numbered through all pages: each page
 * itself, then its places.
 */
export interface ProseData {
  /** By the name of the shard; each holds a `Shard`. */
  readonly words: Readonly<Record<string, string>>;
  /** For each page what its sections say, as `ProseTexts`; "" where it says nothing. */
  readonly texts: readonly string[];
  /** For each page which of its sections are steps: 0 is the page itself. */
  readonly steps: readonly (readonly number[])[];
}

/** Of the sections of a page that say something: 0 for the page itself, from 1 its places. */
export type ProseTexts = readonly (readonly [section: number, texts: readonly string[]])[];

export const proseFolder = "assets/search/";

/** Where the scripts of the shards leave what they hold, by their names. */
export type ProseGlobal = { benchwrightProse?: Record<string, unknown> };

/**
 * A lunr index without what can be worked out from the rest: lunr writes down which pages have a word, and again which
 * words a page has. Packed so, it is half as large.
 */
export interface PackedIndex {
  /** Sorted as lunr sorts them. */
  readonly words: readonly string[];
  /** By field, for each page: the step from one word's place in `words` to the next, then that word's weight. */
  readonly fields: readonly (readonly [name: string, pages: readonly (readonly number[])[]])[];
}

/** The global variable in which the data's script leaves it: works from disk, where nothing can be fetched. */
export type SearchGlobal = { benchwrightSearch?: SearchData };
