import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placeFinder } from "../../../src/engine/search/best-place.ts";
import { find } from "../../../src/engine/search/find.ts";
import { eachEntry, type FieldTexts, fields, indexPages } from "../../../src/engine/search/search-index.ts";
import { indexWords } from "../../../src/engine/search/words.ts";

const page = (title: string, headings: string[] = [], terms: string[] = []): FieldTexts => ({
  title: [title],
  headings,
  terms,
});

const index = indexPages([
  page("Strip a spring motor", ["Let the spring down", "Undo the motor board"], ["4 BA", "board screws"]),
  page("Slotted screws", ["Choose the blade", "Free a stuck screw"], ["2 BA", "M3x0.5", "1/4-20 UNC"]),
  page("Spring grease", [], ["mainspring"]),
  page("Needle oiler", ["Refill it"]),
]);
const pages = (query: string) => find(index, query).map((found) => found.page);

describe("finding", () => {
  test("a title counts more than a heading, and a heading more than a term", () => {
    const three = indexPages([page("a page", [], ["anvil"]), page("a page", ["anvil"]), page("anvil")]);
    expect(find(three, "anvil").map((found) => found.page)).toEqual([2, 1, 0]);
  });

  test.each([
    ["2ba", [1]],
    ["4 Ba", [0]],
    ["m3 x .5", [1]],
    ["¼-20 unc", [1]],
    ["oiling", [3]],
    ["gresae", [2]],
    ["spring board", [0]],
    ["zither", []],
    ["", []],
  ])("%s", (query, expected) => {
    expect(pages(query)).toEqual(expected);
  });

  test("pages that answer all words, and only where there are none those that answer most", () => {
    expect(pages("spring grease")).toEqual([2]);
    expect(find(index, "spring grease zither").map(({ page, words }) => [page, words])).toEqual([[2, 2]]);
  });
});

test("the index holds each word of each field of each page, and nothing else", () => {
  const text = fc.string({ unit: fc.constantFrom("a", "b", "c", " "), maxLength: 6 });
  const pageTexts = fc.record({
    title: fc.array(text, { maxLength: 2 }),
    headings: fc.array(text, { maxLength: 2 }),
    terms: fc.array(text, { maxLength: 2 }),
  });
  fc.assert(
    fc.property(fc.array(pageTexts, { maxLength: 6 }), (made) => {
      const built = indexPages(made);
      const held = new Set<string>();
      for (const [at, word] of built.words.entries())
        eachEntry(built, at, (page, weight) => held.add(`${word} ${page} ${weight}`));
      const expected = new Set<string>();
      for (const [number, texts] of made.entries()) {
        const weights = new Map<string, number>();
        for (const { name, weight } of fields) {
          for (const word of new Set(texts[name].flatMap(indexWords)))
            weights.set(word, (weights.get(word) ?? 0) + weight);
        }
        for (const [word, weight] of weights) expected.add(`${word} ${number} ${weight}`);
      }
      expect(held).toEqual(expected);
      expect(built.words).toEqual([...built.words].sort());
    }),
  );
});

describe("the best place on a page", () => {
  const place = (heading: string, ...names: string[]) => ({
    heading: indexWords(heading),
    names: names.flatMap(indexWords),
  });
  const title = place("Strip a spring motor");
  const places = [
    place("Let the spring down", "winding key"),
    place("Undo the motor board", "4 BA"),
    place("Fit the board", "4 BA"),
  ];

  test.each([
    ["spring", -1],
    ["let down", 0],
    ["board", 1],
    ["4ba", 1],
    ["fit board", 2],
    ["winding", 0],
    ["zither", -1],
  ])("for %s it is %i", (query, expected) => {
    expect(placeFinder(query)(title, places)).toBe(expected);
  });
});
