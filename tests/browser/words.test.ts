/**
 * No word of the site is left unmarked. The site is built in a language in which each message stands in brackets; whatever
 * stands in none is the content's own (which is German here), or is let through for a reason.
 */
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { substanceIds } from "../../src/engine/workshop/air/substances.ts";
import { person, recordText } from "../support/competency.ts";
import { copyInPseudo, unmarkedWords, wordsOfContent } from "../support/pseudo-language.ts";
import { withBrowser } from "./site/browser.ts";
import { type BuiltSite, builtSite, germanContent } from "./site/in-language.ts";
import { sitePages } from "./site/pages.ts";
import { textsOn } from "./site/texts.ts";

const months = Array.from({ length: 12 }, (_, month) =>
  (["long", "short"] as const).map((length) =>
    new Intl.DateTimeFormat("en", { month: length }).format(new Date(2026, month, 15)),
  ),
).flat();

const days = Array.from({ length: 7 }, (_, day) =>
  new Intl.DateTimeFormat("en", { weekday: "long" }).format(new Date(2026, 10, day + 1)),
);

/** What is no word of a language, each with the reason. */
const letThrough: readonly RegExp[] = [
  // Units and formula signs are the same in every language (SI, NIST SP 811).
  /[\p{L}\d²³·]+\/[\p{L}\d²³]+|\b(?:[kcmµ]?m[²³]?|[kcm]?N|[MGk]?Pa|m?L|US|imp|gal|qt|pt|fl|oz|in|ft|thou|cfm|lbf?|ozf|[kg]?gf|psi|bar|ppm|min|kg|mg|MB|kHz|rad|rpm|cm|mm|atm|mol)(?![\p{L}])/gu,
  /[\p{L}]+·[\p{L}]+/gu,
  // Names of threads, standards and codes; keys and ids of this programme and its people.
  /\b(?:ISO|DIN|EN|BS|VDI|UNC|UNF|UN|BA|BSW|BSF|ASME|NIST|SP|NIOSH|ACGIH|ANSI|IEC|FED|STD|NASA|CODATA|LFL|CU\d|GHS\d*)\b(?:[- ]?[\d.:/A-Z-]+)?/g,
  /did:key:\S+|… \w+|[\w.-]+\.(?:json|yaml|record)|tag:\S+|\bkaffeemuehle\b/g,
  // Ids of solvents, by which sums and commands know them; codes of `record check`.
  new RegExp(`\\b(?:${substanceIds().join("|")}|schema)\\b`, "g"),
  // What Intl puts in by itself: names of months and days, and the words between parts of a list or of a date.
  new RegExp(`\\b(?:${[...months, ...days].join("|")}|and|at|[AP]M)\\b`, "g"),
];

const content = wordsOfContent(germanContent);
const unmarked = async (page: Page): Promise<string[]> => [
  ...new Set((await textsOn(page)).flatMap((text) => unmarkedWords(text, content, letThrough))),
];

let site: BuiltSite;
const visitor = withBrowser(() => site.url);
beforeAll(async () => {
  site = await builtSite((folder) => {
    copyInPseudo(germanContent, join(folder, "content"));
    return join(folder, "content");
  });
}, 180_000);
afterAll(() => site?.end());

const module = "modules/kaffeemuehle/";

test("a word that stands in no bracket is seen", () => {
  expect(unmarkedWords("⟦Steps⟧ of 5 mm Kurbel ⟦in ⟦all⟧⟧", content, letThrough)).toEqual(["of"]);
});

test("every page, before and after its script has run", { timeout: 180_000 }, async () => {
  const pages = sitePages(site.folder);
  expect(pages.length).toBeGreaterThan(20);
  const { page } = await visitor.open("");
  const found: Record<string, string[]> = {};
  for (const { path } of pages) {
    // The reference for authors names the fields of the files, which are English, as what commands say is.
    if (path === "authors/") continue;
    await page.goto(site.url + path);
    for (const note of await page.locator(".needs-script").all()) await note.waitFor({ state: "detached" });
    const words = await unmarked(page);
    if (words.length > 0) found[path] = words;
  }
  expect(found).toEqual({});
});

/** Presses a button by a part of what it says; one that is not there now is passed over. */
async function press(page: Page, words: RegExp): Promise<void> {
  const button = page.locator("button:visible").filter({ hasText: words }).first();
  if ((await button.count()) > 0) await button.click();
}

type Deed = (page: Page) => Promise<unknown>;

/** The moment to which the clock of the bench page is held. */
const noon = Date.UTC(2027, 2, 4, 12, 0, 0);
const clockAt =
  (minutes: number): Deed =>
  (page) =>
    page.clock.setFixedTime(noon + minutes * 60_000);
const hash =
  (id: string): Deed =>
  (page) =>
    page.evaluate((to) => {
      location.hash = to;
    }, id);
const open =
  (summary: RegExp): Deed =>
  (page) =>
    page.locator("summary:visible").filter({ hasText: summary }).first().click();
const pressing =
  (words: RegExp): Deed =>
  (page) =>
    press(page, words);
const key =
  (name: string): Deed =>
  (page) =>
    page.keyboard.press(name);

/** Someone who is called as a thing of the content is. */
const trainee = person("Kurbel");
const programme = "tag:spritzenhaus.example,2026:werkstatt";
const given = (name: string, text: string) => ({
  ...{ name, mimeType: "application/json", buffer: Buffer.from(text) },
});

describe("what scripts write", () => {
  test.each<[name: string, path: string, deeds: Deed[]]>([
    [
      "practice",
      `${module}practice/`,
      [
        (page) => press(page, /Check this order/),
        (page) => page.locator("button[aria-label*='Leave out']").first().click(),
        (page) => press(page, /Check this order/),
        (page) => press(page, /Do this move/),
        (page) => press(page, /Show me/),
      ],
    ],
    [
      "dry run",
      `${module}dry-run/`,
      [
        "Kurbel aufsetzen",
        "Kurbel abnehmen",
        "Mahlspalt öffnen",
        "Deckel abnehmen",
        "Mahlkegel reinigen",
      ].map((title) => (page: Page) => press(page, new RegExp(title))),
    ],
    [
      "quiz",
      `${module}quiz/`,
      [
        (page) => page.locator('[data-question="zuerst"] input').last().check(),
        (page) => page.locator('[data-question="menge"] input').first().fill("7 Kurbel"),
        (page) => page.locator('[data-question="wort"] input').first().fill("Niete"),
        (page) => page.locator("button[type=submit]:visible").click(),
        (page) => page.locator("button[type=submit]:visible").click(),
      ],
    ],
    [
      "search",
      "search/",
      ["kurbel", "M4", "torque", "xyzzy"].map(
        (word) => (page: Page) => page.getByRole("searchbox").fill(word),
      ),
    ],
    [
      "sums",
      "sums/",
      [
        async (page) => {
          for (const form of await page.locator("main form").all())
            await form.locator("button[type=submit]").click();
        },
        async (page) => {
          await page.locator("#thread [name=thread]").fill("M6.3");
          await page.locator("#thread button[type=submit]").click();
        },
        async (page) => {
          await page.locator("#torque [name=thread]").fill("M8x1");
          await page.locator("#torque [name=class]").fill("8.8");
          await page.locator("#torque [name=friction]").fill("0.1");
          await page.locator("#torque button[type=submit]").click();
        },
      ],
    ],
    [
      "bench",
      `${module}bench/`,
      [
        clockAt(0),
        pressing(/Next/),
        (page) => page.locator(".step:not(.is-away) .bench-check input").first().check(),
        (page) => page.getByRole("checkbox", { name: /Done/ }).check(),
        pressing(/Undo/),
        (page) => page.setViewportSize({ width: 360, height: 740 }),
        (page) => page.locator(".tray-strip:visible").click(),
        hash("putzen"),
        pressing(/Start (?:the wait|drying)/),
        hash("kurbel-ab"),
        (page) => page.locator(".waits-strip").click(),
        clockAt(30),
        clockAt(65),
        pressing(/Put away/),
        pressing(/Undo/),
        hash("s_after"),
        hash("s_before"),
        open(/Screen and sound/),
        pressing(/Let me hear it/),
        open(/Keys and foot switch/),
        pressing(/Teach a key/),
        key("Tab"),
        pressing(/Teach a key/),
        key("b"),
        pressing(/Clear/),
        pressing(/Teach a key/),
        key("Escape"),
        pressing(/Hand over to another device/),
        pressing(/Copy the link/),
        pressing(/Close/),
        pressing(/Start over with another machine/),
        pressing(/No, leave it/),
        pressing(/Start over with another machine/),
        pressing(/Yes, start over/),
      ],
    ],
    [
      "place handed over",
      `${module}bench/`,
      [
        pressing(/Next/),
        (page) => page.getByRole("checkbox", { name: /Done/ }).check(),
        async (page) => {
          await pressing(/Hand over to another device/)(page);
          const link = await page.locator(".bench-dialog textarea").inputValue();
          await pressing(/Close/)(page);
          await pressing(/Start over with another machine/)(page);
          await pressing(/Yes, start over/)(page);
          await page.goto(link);
          await page.reload();
        },
        pressing(/Yes, take over/),
        async (page) => {
          await page.goto(`${site.url}${module}bench/#s_place=kurbel`);
          await page.reload();
        },
      ],
    ],
    [
      "evening",
      "desk/evening/",
      [
        async (page) => {
          const text = await recordText(trainee, [], programme);
          await page.locator("#evening-file").setInputFiles([given("kurbel.record.json", text)]);
          await page.locator(".evening-card").waitFor();
        },
        (page) => page.locator("#evening-task").selectOption({ index: 1 }),
        (page) => page.locator("#evening-task").selectOption({ index: 0 }),
        (page) => page.locator(".evening-card input[type=checkbox]").first().check(),
        (page) => page.locator(".evening-card input[type=radio]").first().check(),
        (page) => page.locator(".evening-card input[type=radio]").last().check(),
        (page) => page.locator(".evening-card textarea").fill("Kurbel"),
        (page) => page.locator("#evening-file").setInputFiles([given("kurbel.json", '{"kurbel": 1}')]),
        pressing(/Save all files/),
        (page) => page.locator("#evening-notes").setInputFiles([given("kurbel.notes.json", "{}")]),
        pressing(/Save the notes as a file/),
      ],
    ],
    [
      "evening of one who has a key",
      "desk/",
      [
        pressing(/Make a key in/),
        async (page) => {
          await page.locator(".did").first().waitFor();
          await page.goto(`${site.url}desk/evening/`);
          const text = await recordText(trainee, [], programme);
          await page.locator("#evening-file").setInputFiles([given("kurbel.record.json", text)]);
          await page.locator(".evening-card").waitFor();
        },
        pressing(/Sign all of it/),
        (page) => page.locator(".evening-card input[type=radio]").last().check(),
        pressing(/Sign all of it/),
        pressing(/Save all files/),
      ],
    ],
    ["record", "record/", [(page) => press(page, /Keep this name/), (page) => press(page, /Erase/)]],
    ["desk", "desk/", [(page) => press(page, /Make a key in/), (page) => press(page, /Forget the key/)]],
    [
      "check",
      "check/",
      [
        (page) =>
          page.locator("input[type=file]").setInputFiles({
            ...{ name: "kurbel.json", mimeType: "application/json" },
            buffer: Buffer.from('{"kurbel": 1}'),
          }),
      ],
    ],
  ])("%s", async (_, path, deeds) => {
    const { page } = await visitor.open(path);
    for (const [at, deed] of deeds.entries()) {
      await deed(page);
      await expect.poll(() => unmarked(page), { message: `after deed ${at + 1}` }).toEqual([]);
    }
    expect(deeds.length).toBeGreaterThan(0);
  });
});
