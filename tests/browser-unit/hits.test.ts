/** What the search of the demo programme shows for threads, however they are written. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
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
];
const search = searcher(JSON.parse(JSON.stringify(buildSearch(documents))) as SearchData);
const screws = "modules/slotted-screws/index.html";

describe("a fastener is found by its thread in the parts list", () => {
  test.each(["4 BA", "4BA", "ba 4", "4BA screw", "4 ba screws"])("%s", (query) => {
    expect(search(query).shown[0]).toMatchObject({
      href: `${screws}#f_plate-screws`,
      heading: "plate screws, 4 BA",
      title: "Slotted screws and small threads",
      isRow: true,
    });
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
