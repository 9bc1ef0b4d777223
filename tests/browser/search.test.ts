import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus } from "./site/keyboard.ts";
import { sitePages } from "./site/pages.ts";

const visitor = withBrowser();

const field = (page: Page) => page.getByRole("searchbox");
const results = (page: Page) => page.getByRole("region", { name: "Found" }).getByRole("link");

const sheet = sitePages().find(({ kind }) => kind === "module")!;
const title = /<h1[^>]*>(?:<[^>]*>)*([^<]+)/.exec(sheet.html)![1]!;

test("a module is found while its title is typed, Enter goes to it and opens it", async () => {
  const { page, troubles } = await visitor.open("search/");
  expect(await hasFocus(field(page))).toBe(true);
  await page.keyboard.type(title.slice(0, title.length - 2));
  expect(await results(page).first().textContent()).toBe(title);
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press("Enter");
  expect(await hasFocus(results(page).first())).toBe(true);
  await page.keyboard.press("Enter");
  await page.waitForURL((url) => url.pathname.endsWith(sheet.file));
  expect(troubles).toEqual([]);
});

test("a step is found by its heading, and its link leads to it on its page", async () => {
  const step =
    /<section class="step" id="([^"]+)">[\s\S]*?<h3[^>]*>(?:<span[^>]*>[^<]*<\/span>)?([^<]+)<\/h3>/.exec(
      sheet.html,
    )!;
  const { page } = await visitor.open("search/");
  await page.keyboard.type(step[2]!);
  const link = results(page).filter({ hasText: step[2]! }).first();
  expect(await link.getAttribute("href")).toContain(`#${step[1]}`);
  await link.click();
  const heading = page.locator(`#${step[1]}`).getByRole("heading").first();
  await expect.poll(async () => (await heading.boundingBox())?.y).toBeLessThan(400);
  expect(await heading.textContent()).toContain(step[2]);
});

test("the arrow keys go through what is found, Escape goes back", async () => {
  const { page } = await visitor.open("search/");
  await page.keyboard.type("screw");
  await expect.poll(() => results(page).count()).toBeGreaterThan(1);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  expect(await hasFocus(results(page).nth(1))).toBe(true);
  await page.keyboard.press("Escape");
  expect(await hasFocus(field(page))).toBe(true);
  await page.keyboard.press("ArrowDown");
  const target = await results(page)
    .first()
    .evaluate((link) => (link as HTMLAnchorElement).href);
  await page.keyboard.press("Enter");
  await page.waitForURL(target);
});

test("a thread is found by its designation, as the sheets write it", async () => {
  const written = sitePages().flatMap(({ kind, html, file }) =>
    kind === "module"
      ? [...html.matchAll(/\b\d+ BA\b|\bM\d+(?:\.\d+)?\s?[×x]\s?\d+(?:\.\d+)?/g)].map(([name]) => ({
          name,
          file,
        }))
      : [],
  );
  expect(written.length).toBeGreaterThan(0);
  const { name } = written[0]!;
  const { page } = await visitor.open("search/");
  await page.keyboard.type(name);
  const hrefs = await results(page).evaluateAll((links) =>
    links.map((link) => (link as HTMLAnchorElement).pathname),
  );
  const files = written.filter((each) => each.name === name).map(({ file }) => file);
  expect(hrefs.some((href) => files.some((file) => href.endsWith(file)))).toBe(true);
});

test("a fastener is found by its name and thread, and its link leads to its row of the parts list", async () => {
  const pattern = /<tr id="(f_[^"]+)">.*?<th scope="row">([^<]+?) *<.*?<td data-name="Size">(\d+ BA)\b/;
  const [, id, name, thread] = sitePages()
    .map(({ html }) => pattern.exec(html))
    .find((found) => found !== null)!;
  const { page } = await visitor.open("search/");
  await page.keyboard.type(`${name} ${thread}`);
  const link = results(page)
    .and(page.locator(`[href$="#${id}"]`))
    .first();
  expect(await link.textContent()).toBe(`${name}, ${thread}`);
  expect(await link.locator("xpath=..").textContent()).toContain("parts list of");
  await link.click();
  await expect.poll(async () => (await page.locator(`#${id}`).boundingBox())?.y).toBeLessThan(400);
});

test("a slip of the finger is forgiven, and what is not there is told", async () => {
  const { page } = await visitor.open("search/");
  await page.keyboard.type("screwdrvier");
  await expect
    .poll(async () => (await results(page).allTextContents()).join().toLowerCase())
    .toContain("screwdriver");
  await field(page).fill("zzqxv");
  await expect.poll(() => page.locator(".search-status").textContent()).toMatch(/nothing found/i);
  expect(await results(page).count()).toBe(0);
});

test("what was typed stays in the address, so that going back finds it again", async () => {
  const { page } = await visitor.open("search/");
  await page.keyboard.type("white spirit");
  const first = await results(page).first().textContent();
  await results(page).first().click();
  await page.goBack();
  await expect.poll(() => results(page).first().textContent()).toBe(first);
  expect(await field(page).inputValue()).toBe("white spirit");
});

test.each([
  ["torque", "Tightening torque and preload", "sums/index.html#torque"],
  ["tap drill", "A thread by its name", "sums/index.html#thread"],
  ["stripping", "Does the screw break or the thread strip?", "sums/index.html#strip"],
  ["vapour in a room", "Vapour in a room", "sums/index.html#vapour"],
  ["convert units", "Units", "sums/index.html#convert"],
  ["thread chart", "Thread chart", "sums/threads/index.html"],
  ["7/16-20 UNF", "UNF, Unified fine", "sums/threads/index.html#unf"],
])("%s finds %s, and its link leads there", async (query, heading, href) => {
  const { page, troubles } = await visitor.open("search/");
  await page.keyboard.type(query);
  const link = results(page).and(page.locator(`[href$="${href}"]`));
  expect(await link.textContent()).toBe(heading);
  await link.click();
  const place = page.getByRole("heading", { name: heading, exact: true });
  await expect.poll(async () => (await place.boundingBox())?.y).toBeLessThan(400);
  expect(troubles).toEqual([]);
  await page.context().close();
});

test("what stands in the prose of a section is found with its sentence, its words marked", async () => {
  const { page, troubles } = await visitor.open("search/");
  await page.keyboard.type("data sheet section");
  const sentence = page.getByRole("region", { name: "Found" }).locator("q.why").first();
  await expect.poll(() => sentence.count(), { timeout: 20_000 }).toBe(1);
  expect(await sentence.locator("mark").count()).toBeGreaterThan(0);
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("a word of the trade is found by another for the same, and it is said", async () => {
  const { page } = await visitor.open("search/");
  await page.keyboard.type("mineral spirits");
  await expect
    .poll(async () => (await results(page).allTextContents()).join().toLowerCase())
    .toContain("white spirit");
  await expect.poll(() => page.locator(".search-status").textContent()).toContain("“white spirit”");
});

test("a misspelt word is mended, and it is said", async () => {
  const { page } = await visitor.open("search/");
  await page.keyboard.type("sping");
  await expect
    .poll(() => page.locator(".search-status").textContent())
    .toContain("Nothing for “sping”; shown for “spring”");
  expect(await results(page).count()).toBeGreaterThan(0);
});
