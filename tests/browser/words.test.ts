/**
 * No word of the site is left unmarked. The site is built in a language in which each message stands in brackets; whatever
 * stands in none is the content's own (which is German here), or is let through for a reason.
 */
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { substanceIds } from "../../src/engine/workshop/air/substances.ts";
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

describe("what scripts write", () => {
  test.each<[name: string, path: string, deeds: ((page: Page) => Promise<unknown>)[]]>([
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
