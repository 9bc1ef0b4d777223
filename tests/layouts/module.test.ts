/** The operation sheet of the fixture's mill, of which the title block and the end are not all given. */
import { describe, expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { modulePage } from "../../layouts/pages/module.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { millSite } from "../render/fixture.ts";

const { site, mill } = millSite();
const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const book = bookOf(
  site,
  assets,
  () => raw(""),
  () => undefined,
);
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
