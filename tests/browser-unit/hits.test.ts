/** What the search of the demo programme shows for threads, however they are written. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sumForms } from "../../layouts/interactive/sums.ts";
import { threadCharts } from "../../layouts/pages/threads.ts";
import { sumDocuments } from "../../layouts/sum-documents.ts";
import { searcher } from "../../src/browser/search/hits.ts";
import { buildSearch } from "../../src/bundle/search-index.ts";
import { moduleDocuments, sheetDocuments } from "../../src/derive/search.ts";
import type { SearchData } from "../../src/model/search-data.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { projectDir } from "../support/project.ts";

const { content } = validate(read(join(projectDir, "content")).reading);
const documents = [
  ...sheetDocuments(content),
  ...[...content.modules.values()].flatMap((module) => moduleDocuments(module, content)),
  ...sumDocuments(),
];
const search = searcher(JSON.parse(JSON.stringify(buildSearch(documents))) as SearchData);
const screws = "modules/slotted-screws/index.html";

/** Rows of the parts lists whose fasteners have this thread, as the modules write it. */
const rowsWith = (written: string) =>
  [...content.modules.values()].flatMap(({ id, title, procedure }) =>
    [...procedure.fasteners.values()]
      .filter(({ thread }) => thread === written)
      .map(({ id: fastener, name }) => ({
        href: `modules/${id}/index.html#f_${fastener}`,
        heading: `${name}, ${written}`,
        title,
      })),
  );

describe("a fastener is found by its thread in the parts list", () => {
  test.each(["4 BA", "4BA", "ba 4", "4BA screw", "4 ba screws"])("%s", (query) => {
    const rows = rowsWith("4 BA");
    expect(rows.map(({ href }) => href)).toContain(`${screws}#f_plate-screws`);
    const [first] = search(query).shown;
    expect(first?.isRow).toBe(true);
    expect(rows).toContainEqual({ href: first!.href, heading: first!.heading, title: first!.title });
  });
});

describe("a thread that stands in a table, a text or a summary is found, and the hit says how it is written", () => {
  test.each([
    ["M6", `${screws}#measure`, "M6×1"],
    ["1/4 BSW", `${screws}#measure`, "1/4 in BSW"],
    ["1/4-20", `${screws}#measure`, "1/4-20 UNC"],
    ["#10-32", `${screws}#measure`, "#10-32 UNF"],
    ["M6", "tools/thread-gauge/index.html#near-twins", "M6×1"],
    ["M3", "tools/screwdriver-slotted-5/index.html", "M3"],
  ])("%s: %s says %s", (query, href, written) => {
    const hit = search(query).shown.find((each) => each.href === href);
    expect(hit?.found.join()).toContain(written);
  });

  test("a series alone finds the pages that name it, and no word that begins so", () => {
    for (const series of ["BA", "BSW", "BSF"]) {
      const { shown } = search(series);
      expect(shown.length).toBeGreaterThan(0);
      for (const { heading, title, found } of shown)
        expect([heading, title, ...found].join(" ")).toMatch(RegExp(String.raw`\d?${series}\b`));
    }
  });
});

describe("a bench sum is found", () => {
  const hrefs = (query: string) => search(query).shown.map(({ href }) => href);

  test.each(sumForms)("$id, by its name and by what people call it", ({ id, title, foundBy }) => {
    expect(foundBy.length).toBeGreaterThan(3);
    for (const query of [title, ...foundBy]) expect(hrefs(query), query).toContain(`sums/index.html#${id}`);
  });

  test.each([
    ["torque", "sums/index.html#torque"],
    ["tightening", "sums/index.html#torque"],
    ["tap drill", "sums/index.html#thread"],
    ["stripping", "sums/index.html#strip"],
    ["vapour in a room", "sums/index.html#vapour"],
    ["convert units", "sums/index.html#convert"],
    ["convert", "sums/index.html#convert"],
    ["identify", "sums/index.html#identify"],
    ["ventilation", "sums/index.html#air"],
    ["bench sums", "sums/index.html"],
    ["thread chart", "sums/threads/index.html"],
    ["route sheet", "route/index.html"],
    ["working alone", "route/index.html"],
    ["tap drill", "sums/threads/index.html"],
    ["Whitworth", "sums/threads/index.html#bsw"],
    ["1/4 whit", "sums/threads/index.html#bsw"],
    ["3/8 W", "sums/threads/index.html#bsw"],
    ["10 BA", "sums/threads/index.html#ba"],
    ["M10x1.25", "sums/threads/index.html#metric-fine"],
    ["7/16-20 UNF", "sums/threads/index.html#unf"],
  ])("%s leads to %s, among the first five", (query, href) => {
    expect(hrefs(query).slice(0, 5)).toContain(href);
  });

  test("every thread of the chart, at the table of its series", () => {
    const charts = threadCharts();
    expect(charts.length).toBe(7);
    for (const { id, rows } of charts)
      for (const { size } of rows)
        expect(hrefs(size.designation), size.designation).toContain(`sums/threads/index.html#${id}`);
  });
});
