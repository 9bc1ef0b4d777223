/** Of the places that say a word in their prose: all are counted, the best are shown, none twice. */
import { expect, test } from "vitest";
import { searcher } from "../../src/browser/search/hits.ts";
import { proseView } from "../../src/browser/search/prose-view.ts";
import { buildProse } from "../../src/bundle/prose-shards.ts";
import { buildSearch, groupByPage } from "../../src/bundle/search-index.ts";
import type { ProseGlobal, SearchData } from "../../src/model/search-data.ts";
import type { SearchDocument } from "../../src/model/site.ts";

const module = (id: string): SearchDocument["address"] => ({ kind: "module", id });

/** A module called after the pawl, whose own text says it, and fifty sections of another that do. */
const documents: readonly SearchDocument[] = [
  { address: module("pawl"), title: "The pawl", heading: "", terms: [], says: ["A pawl holds a wheel."] },
  { address: module("many"), title: "Many", heading: "", terms: [] },
  ...Array.from({ length: 50 }, (_, at) => ({
    address: { ...module("many"), at: `section-${at}` },
    title: "Many",
    heading: `Section ${at}`,
    terms: [],
    says: [`Here the pawl is ${"seen ".repeat(at)}again.`],
  })),
];

function search() {
  const found = buildSearch(documents);
  const prose = buildProse(groupByPage(documents), found.pages);
  const page: ProseGlobal = {};
  for (const script of prose.files.values()) new Function("self", script)(page);
  const data: SearchData = { ...found, prose: prose.data };
  return searcher(data)(
    "pawl",
    proseView(data, (name) => page.benchwrightProse?.[name]),
  );
}

test("fifty sections are counted, twenty are shown, and the page that its title shows is not among them", () => {
  const { shown, said, saidBy } = search();
  expect(shown.map(({ title }) => title)).toEqual(["The pawl"]);
  expect(saidBy).toBe(50);
  expect(said).toHaveLength(20);
  expect(said.every(({ href }) => href.startsWith("modules/many/index.html#section-"))).toBe(true);
  expect(said[0]!.sentence).toMatch(/^Here the pawl is/);
});
