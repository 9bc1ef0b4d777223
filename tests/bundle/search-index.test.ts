import { expect, test } from "vitest";
import { buildSearch } from "../../src/bundle/search-index.ts";
import type { SearchDocument } from "../../src/model/site.ts";

const step = (at: string, heading: string, ...terms: string[]): SearchDocument => ({
  address: { kind: "module", id: "constructor", at },
  title: "Motor",
  heading,
  terms,
});

test("a page's own document comes first, whatever the order given", () => {
  const own: SearchDocument = {
    address: { kind: "module", id: "constructor" },
    title: "Motor",
    heading: "",
    terms: [],
  };
  const { pages } = buildSearch([step("a", "First"), own, step("b", "Second")]);
  expect(pages).toEqual([
    [
      "module",
      "modules/constructor/index.html",
      "Motor",
      [
        ["First", "a", []],
        ["Second", "b", []],
      ],
    ],
  ]);
});

test("a page given by its places alone is a page all the same", () => {
  const { pages } = buildSearch([step("a", "First")]);
  expect(pages).toEqual([["module", "modules/constructor/index.html", "Motor", [["First", "a", []]]]]);
});

test("a name stands at the first place that bears it", () => {
  const { pages, names } = buildSearch([
    step("a", "First", "4 BA"),
    step("b", "Second", "oil", "4 BA", "__proto__"),
  ]);
  const places = pages[0]![3].map(([, at, numbers]) => [at, numbers.map((number) => names[number])]);
  expect(places).toEqual([
    ["a", ["4 BA"]],
    ["b", ["oil", "__proto__"]],
  ]);
});
