import { existsSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { type Visit, withBrowser } from "./site/browser.ts";
import { sitePages } from "./site/pages.ts";

const pages = sitePages();
const visitor = withBrowser();
const siteUrl = inject("siteUrl");
const siteDir = inject("siteDir");

test("the demo has pages of every kind", () => {
  const kinds = new Set(pages.map(({ kind }) => kind));
  const wanted = [
    "module",
    "order",
    "bench",
    "paper",
    "practice",
    "dry-run",
    "quiz",
    "tool",
    "substance",
    "hazard",
  ];
  const alone = [
    "",
    "modules/",
    "route/",
    "authors/",
    "tools/",
    "substances/",
    "hazards/",
    "search/",
    "about/",
    "sums/",
    "sums/threads/",
    "sums/formulas/",
    "record/",
    "check/",
    "desk/",
    "desk/evening/",
    "poster/",
  ].map((path) => `plain ${path}`);
  expect([...kinds]).toEqual(expect.arrayContaining([...wanted, ...alone]));
});

/** One page goes through the whole site: opening a new one each time takes longer than all else. */
let visit: Visit;
beforeAll(async () => {
  visit = await visitor.open("", { viewport: { width: 320, height: 800 } });
});

describe.each(pages)("$file", ({ path, html }) => {
  test("loads without an error, a failed request or a request to elsewhere, and fits 320 px", async () => {
    const { page, troubles } = visit;
    const before = troubles.length;
    await page.goto(siteUrl + path);
    await page.evaluate(() => document.fonts.ready);
    // WCAG 2.2, 1.4.10 Reflow: no scrolling in two directions at a width of 320 CSS pixels, and nothing cut off.
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    expect(await page.evaluate(cutOff)).toEqual([]);
    expect(await page.title()).not.toBe("");
    expect(await page.getByRole("heading", { level: 1 }).count()).toBe(1);
    expect(troubles.slice(before)).toEqual([]);
  });

  test("has its policy, and nothing inline that the policy would have to allow", () => {
    const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html)?.[1] ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    const scripts = html.match(/<script\b[^>]*>/g) ?? [];
    expect(scripts.filter((tag) => !/ src="/.test(tag) && !/ type="application\/json"/.test(tag))).toEqual(
      [],
    );
    expect(html).not.toMatch(/<style\b|<[^>]+ style=|<[^>]+ on[a-z]+=|javascript:/i);
  });

  test("leads only to what is there, by relative links", () => {
    const links = [...html.matchAll(/ (?:href|src)="([^"]*)"/g)].map((match) =>
      match[1]!.replaceAll("&amp;", "&"),
    );
    expect(links.length).toBeGreaterThan(5);
    expect(links.filter((link) => /^(?:[a-z]+:|\/)/i.test(link))).toEqual([]);
    expect(links.filter((link) => !leadsSomewhere(path, link))).toEqual([]);
  });
});

/** The file is there, and the element that is named after #. */
function leadsSomewhere(from: string, link: string): boolean {
  const { pathname, hash } = new URL(link, siteUrl + from);
  const base = new URL(siteUrl).pathname;
  const file = `${siteDir}/${decodeURIComponent(pathname.slice(base.length))}${pathname.endsWith("/") ? "index.html" : ""}`;
  if (!pathname.startsWith(base) || !existsSync(file)) return false;
  return hash === "" || readFileSync(file, "utf8").includes(` id="${decodeURIComponent(hash.slice(1))}"`);
}

/** Of the page's outermost elements those that hide what does not fit, instead of fitting it. */
function cutOff(): string[] {
  const outer = [document.documentElement, document.body, ...document.body.children];
  const hides = (element: Element) => ["hidden", "clip"].includes(getComputedStyle(element).overflowX);
  return outer.filter((element) => hides(element) && element.clientWidth > 100).map(({ tagName }) => tagName);
}
