import { describe, expect, test } from "vitest";
import { find } from "../../src/browser/search/find.ts";
import { loadIndex } from "../../src/browser/search/load-index.ts";
import { indexPages, type PageTexts } from "../../src/bundle/page-index.ts";
import { queryWords } from "../../src/engine/search/words.ts";
import type { PackedIndex } from "../../src/model/search-data.ts";

const page = (title: string, headings: string[] = [], terms: string[] = []): PageTexts => ({
  title,
  headings,
  terms,
});

const load = (...pages: PageTexts[]) =>
  loadIndex(JSON.parse(JSON.stringify(indexPages(pages))) as PackedIndex);

const index = load(
  page("Strip a spring motor", ["Let the spring down", "Undo the motor board"], ["4 BA", "board screws"]),
  page("Slotted screws", ["Choose the blade", "Free a stuck screw"], ["2 BA", "M3x0.5", "1/4-20 UNC"]),
  page("Spring grease", [], ["mainspring"]),
  page("Needle oiler", ["Refill it"]),
);
const meant = (query: string) => queryWords(query).map((word) => [word]);
const pages = (query: string) => find(index, meant(query)).map((found) => found.page);

describe("finding", () => {
  test("a title counts more than a heading, and a heading more than a term", () => {
    const three = load(page("a page", [], ["anvil"]), page("a page", ["anvil"]), page("anvil"));
    expect(find(three, meant("anvil")).map((found) => found.page)).toEqual([2, 1, 0]);
  });

  test.each([
    ["2ba", [1]],
    ["4 Ba", [0]],
    ["m3 x .5", [1]],
    ["¼-20 unc", [1]],
    ["oiling", [3]],
    ["spring board", [0]],
    ["zither", []],
    ["", []],
  ])("%s", (query, expected) => {
    expect(pages(query)).toEqual(expected);
  });

  test("pages that answer all words, and only where there are none those that answer most", () => {
    expect(pages("spring grease")).toEqual([2]);
    expect(find(index, meant("spring grease zither")).map(({ page, words }) => [page, words])).toEqual([
      [2, 2],
    ]);
  });

  test("what is a word somewhere does not begin others there; where it is none, it does", () => {
    const three = load(page("Bag", ["Bar", "Bath"]), page("Screws", [], ["4 BA"]), page("Uncover it"));
    expect(find(three, meant("BA")).map((found) => found.page)).toEqual([1]);
    expect(find(three, meant("sc")).map((found) => found.page)).toEqual([1]);
    expect(find(three, meant("unc")).map((found) => found.page)).toEqual([2]);
  });

  test("a thread is never another by a slip, nor a page by one letter", () => {
    expect(pages("m4")).toEqual([]);
    expect(pages("z")).toEqual([]);
  });
});
