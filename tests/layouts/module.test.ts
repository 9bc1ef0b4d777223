/** The operation sheet of the fixture's mill, of which the title block and the end are not all given. */
import { describe, expect, test } from "vitest";
import { modulePage } from "../../layouts/pages/module.ts";
import { paperPage } from "../../layouts/pages/paper.ts";
import type { ModuleFastener } from "../../src/model/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { millSite, plainBook } from "../render/fixture.ts";

const { site, mill } = millSite();
const book = plainBook(site);
const pageOf = (view: ModuleView) => modulePage(view, book);
const contentsOf = (page: string) => [
  ...(/<nav aria-label="On this page">(.*?)<\/nav>/s.exec(page)?.[1] ?? "").matchAll(
    /href="#([^"]+)">([^<]+)/g,
  ),
];

/** The mill, with nothing to say of when the work is done. */
const silent: ModuleView = {
  ...mill,
  module: {
    ...mill.module,
    asLeft: [],
    ends: {},
    procedure: { ...mill.module.procedure, leaves: new Map() },
  },
};

test("every link of the contents leads to a place on the page, in the order of the page", () => {
  const page = pageOf(mill);
  const places = contentsOf(page).map(([, id]) => page.indexOf(` id="${id}"`));
  expect(places.length).toBeGreaterThan(4);
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

describe("where nothing is to be told of the end", () => {
  const page = pageOf(silent);

  test("its heading stands on paper alone, above the lines to sign", () => {
    expect(page).toMatch(
      /<section class="group on-paper"[^>]*>\s*<h2 id="s_after-work">[\s\S]*?<dl class="hands on-paper">/,
    );
    expect(pageOf(mill)).not.toContain("group on-paper");
  });

  test("and the contents do not lead there", () => {
    expect(contentsOf(page).map(([, id]) => id)).not.toContain("s_after-work");
    expect(contentsOf(pageOf(mill)).map(([, id]) => id)).toContain("s_after-work");
  });
});

test("empty fields of the title block are for paper alone, as is the number of the sheet", () => {
  const rows = [...pageOf(mill).matchAll(/<div( class="on-paper")?><dt>([^<]+)<\/dt><dd>([^<]*)<\/dd>/g)];
  const field = (name: string) => rows.find(([, , each]) => each === name)?.slice(1);
  expect(field("Written by")).toEqual([undefined, "Written by", "mill bench"]);
  expect(field("Approved by")).toEqual([' class="on-paper"', "Approved by", ""]);
  expect(field("Sheet")).toEqual([' class="on-paper"', "Sheet", "see foot"]);
});

test.each([
  ["draft", "Draft"],
  ["not released", "Not released"],
  ["released", "Released"],
] as const)("the title block of what is %s says so, on screen and on paper", (status, words) => {
  const field = `<div><dt>Document status</dt><dd>${words}</dd></div>`;
  expect(pageOf({ ...mill, status })).toContain(field);
  expect(paperPage({ ...mill, status }, book)).toContain(field);
  expect(pageOf(mill)).not.toContain("Document status");
});

describe("a fastener says what it is and what it goes into", () => {
  const screws = mill.module.procedure.fasteners.get("guard-screws")!;
  const remarks = (more: Partial<ModuleFastener>): string => {
    const set: ModuleFastener = { ...screws, matched: false, ...more };
    const fasteners = new Map([...mill.module.procedure.fasteners, [set.id, set]]);
    const procedure = { ...mill.module.procedure, fasteners };
    const page = pageOf({ ...mill, module: { ...mill.module, procedure } });
    return /<tr id="f_guard-screws">.*?<small>(.*?)<\/small>/.exec(page)?.[1] ?? "";
  };
  const brass = { material: "brass", engagement: "5 mm", isSound: true };

  test.each<[string, Partial<ModuleFastener>]>([
    ["class 8.8; into brass, engagement 5 mm.", { strengthClass: "8.8", into: brass }],
    ["class A2-70.", { strengthClass: "A2-70" }],
    ["of brass.", { strengthClass: "brass" }],
    ["into brass that is not sound.", { into: { ...brass, engagement: undefined, isSound: false } }],
    ["into zinc die casting ZP0400 (alloy 3), engagement 5 mm.", { into: { ...brass, material: "zinc-3" } }],
    ["", {}],
  ])("%s", (said, more) => {
    expect(remarks(more)).toBe(said);
  });
});
