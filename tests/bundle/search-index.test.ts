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
      [],
    ],
  ]);
});

test("a row says its own; what stands nowhere but on the page itself stands behind its places", () => {
  const page: SearchDocument = {
    ...step("", ""),
    address: { kind: "module", id: "m" },
    terms: ["4 BA", "A summary."],
  };
  const row: SearchDocument = { ...step("f_x", "", "board screws", "4 BA"), isRow: true };
  const inPage = (each: SearchDocument): SearchDocument => ({
    ...each,
    address: { ...each.address, id: "m" },
  });
  const { pages, names } = buildSearch([page, row, step("a", "First", "4 BA", "oil")].map(inPage));
  const [, , , places, rows] = pages[0]!;
  const named = (numbers: readonly number[]) => numbers.map((number) => names[number]);
  expect(places.map(([heading, at, says]) => [heading, at, named(says)])).toEqual([
    ["First", "a", ["oil"]],
    ["", "", ["A summary."]],
  ]);
  expect(rows.map(([says, at]) => [named(says), at])).toEqual([[["board screws", "4 BA"], "f_x"]]);
});

test("a page given by its places alone is a page all the same", () => {
  const { pages } = buildSearch([step("a", "First")]);
  expect(pages).toEqual([["module", "modules/constructor/index.html", "Motor", [["First", "a", []]], []]]);
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
