/** The page of formulas shows the whole table, and its links to sums lead to sections of their page. */
import { expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { sumForms } from "../../layouts/interactive/sums.ts";
import { formulasPage } from "../../layouts/pages/formulas.ts";
import { standingWords } from "../../src/engine/workshop/formulas/formula.ts";
import { chapters } from "../../src/engine/workshop/formulas/index.ts";
import { millSite } from "../render/fixture.ts";

const { site } = millSite();
const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const page = formulasPage(
  bookOf(
    site,
    assets,
    () => raw(""),
    () => undefined,
  ),
);
/** As it is written in HTML. */
const escaped = (text: string) =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");

test.each(chapters.flatMap(({ formulas }) => formulas).map((row) => [row.name, row] as const))(
  "%s: formula, unit, range, source and standing",
  (_name, { id, name, says, unit, range, source, standing }) => {
    const [, entry = ""] =
      RegExp(`<article class="formula" aria-labelledby="f-${id}">([\\s\\S]*?)</article>`).exec(page) ?? [];
    for (const text of [name, ...says, unit, range, source, standingWords[standing]])
      expect(entry).toContain(escaped(text));
  },
);

test("every sum is one of the page of sums", () => {
  const asked = new Set(chapters.flatMap(({ formulas }) => formulas).flatMap(({ sums }) => sums));
  expect(asked).toEqual(new Set(sumForms.map(({ id }) => id)));
});
