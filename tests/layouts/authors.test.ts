/** The page for authors: whole, sound, and met only by those who look for it. */
import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { aboutPage } from "../../layouts/pages/about.ts";
import { authorsPage } from "../../layouts/pages/authors.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { kinds } from "../../src/engine/quiz/kinds.ts";
import { codes } from "../../src/model/codes.ts";
import { authorsGuide } from "../../src/validate/schema/reference.ts";
import { millSite, plainBook } from "../render/fixture.ts";

const plain = plainBook(millSite().site);
const book = { ...plain, authors: authorsGuide() };
const page = authorsPage(book);

test("every field, kind of question and code has a place that can be linked to", () => {
  const places = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
  const wanted = [
    ...Object.keys(codes).map((code) => `code-${code}`),
    ...Object.keys(kinds).map((kind) => `kind-${kind}`),
    ...["field-module-parts_ID_held-by", "field-step-remove", "field-question-number-tolerance"],
  ];
  expect(wanted.filter((id) => !places.has(id))).toEqual([]);
});

test("each code that a content folder can bring about has an example as check tells it", () => {
  const entries = [...page.matchAll(/<div id="code-([^"]+)">(.*?)<\/div>/gs)].map(([, code, text]) => [
    code,
    text!,
  ]);
  const without = entries.filter(([, text]) => !text!.includes("<details>")).map(([code]) => code);
  // These are brought about by folders that can't be read, and by words of another language.
  expect(without.sort()).toEqual(
    [
      "no-content",
      "unknown-language",
      "unreadable",
      "word-missing",
      "word-placeholders",
      "words-unreadable",
    ].sort(),
  );
  const wrongType = entries.find(([code]) => code === "wrong-type")![1];
  expect(wrongType).toContain("<p><code>modules/box/module.md:4:11  error wrong-type</code></p>");
  expect(wrongType).toContain(
    "<p><code>&quot;revision&quot; is &quot;one&quot;. Write a whole number.</code></p>",
  );
  expect(wrongType).toMatch(/<code> {2}4 \| revision: one\n {4}\| {11}\^<\/code><\/pre>/);
  // One that points at two places says so before each.
  const late = entries.find(([code]) => code === "late-caution")![1]!;
  expect([...late.matchAll(/<(p|pre)\b/g)].map(([, tag]) => tag)).toEqual(["p", "p", "pre", "p", "pre"]);
});

test("it is valid HTML, each place once", async () => {
  const validator = new HtmlValidate({ extends: ["html-validate:recommended"] });
  const { results } = await validator.validateString(page);
  expect(
    results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`)),
  ).toEqual([]);
});

test("its reference says that it is English", () => {
  expect(page).toContain('<div lang="en" dir="ltr">');
});

test("it is linked from the page about the site alone, where the site has it", () => {
  expect(aboutPage(book)).toContain('href="../authors/index.html"');
  expect(aboutPage(plain)).not.toContain("authors/");
  expect(homePage(book)).not.toContain("authors/");
});
