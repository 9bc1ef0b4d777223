/** The route sheet: what it says of modules of invented programmes, and that it is a sound table. */
import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { asksOfAll } from "../../layouts/components/route-asks.ts";
import { raw } from "../../layouts/html.ts";
import { searchPage } from "../../layouts/interactive/search.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { modulesPage } from "../../layouts/pages/modules.ts";
import { routePage } from "../../layouts/pages/route.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { type Files, soundFiles, writeFolder } from "../support/content-folder.ts";
import { wholeSite } from "../support/whole-site.ts";

const knowledge = (title: string, more: string) => `---
title: ${title}
summary: What it is about.
revision: 1
${more}---

Prose.
`;

const bookFor = (more: Files) => {
  const reading = read(writeFolder(new Map([...soundFiles, ...more]))).reading;
  const { content, diagnostics } = validate(reading);
  expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
  const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
  return bookOf(
    wholeSite(content),
    assets,
    () => raw(""),
    () => undefined,
  );
};

const strict =
  "sign-off: {watched: 2, unaided: 1, occasions: 2, mentors: 2, months: 12, minimum-age: 16, dry-run: true}\n";
const programme = `name: The shed
session: 2 h
sign-off: {watched: 1, unaided: 0, practice: true, mentor-present: true, induction: knows the exits}
`;
const book = bookFor(
  new Map([
    ["programme.yaml", programmeWith(programme)],
    ["modules/springs/module.md", knowledge("Springs", `needs: [box, screws]\n${strict}`)],
    ["modules/screws/module.md", knowledge("Screws", "")],
    ["modules/oils/module.md", knowledge("Oils", "needs: [screws]\n")],
  ]),
);

/** With the condition that the sound programme's module names. */
function programmeWith(text: string): string {
  const own = soundFiles.get("programme.yaml") as string;
  return `${text}${own.slice(own.indexOf("conditions:"))}`;
}

const page = routePage(book);
const words = (html: string) =>
  html
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();
const bodies = [...page.matchAll(/<tbody>([\s\S]*?)<\/tbody>/g)].map(([, body]) => words(body!));

test("a stage a part of the table, each module behind what it needs, within a stage by title", () => {
  expect(bodies).toHaveLength(2);
  expect(bodies[0]).toMatch(/^Stage 1 needs nothing before it Open the box .* Screws /);
  expect(bodies[1]).toMatch(
    /^Stage 2 needs what the stages before it teach Oils Screws .* Springs Open the box ; Screws /,
  );
  expect(page).toContain("4 modules in 2 stages.");
});

test("what is asked for: of the programme once, of a module where it asks for more", () => {
  expect(bodies[0]).toContain(
    "procedure 5 min 1 Quiz passed with 80 %; the practice put right; watched once",
  );
  expect(bodies[1]).toContain("bench knowledge — — Watched once");
  expect(bodies[1]).toContain(
    "bench knowledge — — Watched 2 times; watched doing it unaided; on 2 different days; by 2 different mentors; at least 16 years old; a sign-off holds for 12 months",
  );
  expect(words(page)).toContain(
    "For every module: Knows the exits; a mentor is in the room, also for who is signed off.",
  );
});

test("what all modules ask for stands once, and of a single module in its row", () => {
  const [first, ...others] = book.site.cards;
  expect(asksOfAll([first!, ...others])).toEqual([]);
  expect(asksOfAll([first!])).toEqual([]);
  const twice = { ...first!, practices: 3 };
  expect(asksOfAll([first!, twice])).toEqual(["quiz passed with 80 %", "watched once"]);
  const both = routePage({ ...book, site: { ...book.site, cards: [first!, { ...twice, id: "again" }] } });
  expect(words(both)).toContain("For every module: Quiz passed with 80 %; watched once;");
  expect(words(both)).toContain("Its 3 practices put right Under eye");
});

test("a row has a box and a line for each level", () => {
  const rows = [...page.matchAll(/<tr><th scope="row">[\s\S]*?<\/tr>/g)];
  expect(rows).toHaveLength(4);
  for (const [row] of rows)
    expect(words(row).endsWith("Under eye Alone May teach") && row.match(/class="box"/g)?.length).toBe(3);
});

test("a module that fits no session says so", () => {
  const short = bookFor(new Map([["programme.yaml", programmeWith("name: The shed\nsession: 3 min\n")]]));
  expect(words(routePage(short))).toContain(
    "Needs Hands-on Sessions Asked for Signed for: date, initials Stage 1 needs nothing before it Open the box — 5 min longer than one",
  );
});

test("valid HTML, and led to from the first page and the modules", async () => {
  const { results } = await new HtmlValidate({ extends: ["html-validate:recommended"] }).validateString(page);
  expect(
    results.flatMap(({ messages }) => messages.map((each) => `${each.ruleId}: ${each.message}`)),
  ).toEqual([]);
  expect(homePage(book)).toContain('href="route/index.html"');
  expect(modulesPage(book)).toContain('href="../route/index.html"');
  expect(searchPage(book)).toContain('<a href="../route/index.html">Route sheet</a>');
});
