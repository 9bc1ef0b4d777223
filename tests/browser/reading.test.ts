import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** The module with most steps. */
const sheet = sitePages()
  .filter(({ kind }) => kind === "module")
  .toSorted((a, b) => b.html.length - a.html.length)[0]!;

const trays = (page: Page) => page.getByRole("figure").filter({ hasText: /On the tray after step/ });

/** The number that follows "Total" in a tray. */
async function totalOf(tray: Locator): Promise<number> {
  const [, total] = /Total\s*(\d+)/.exec(await tray.innerText()) ?? [];
  return Number(total);
}

/** What the marks + and − beside parts and screws of a tray, those that are slack left out, come to. */
async function changesOf(tray: Locator): Promise<number> {
  const text = (await tray.innerText()).split(/Slack, on the machine/)[0]!;
  return [...text.matchAll(/[+−]\d+/g)].reduce((sum, [mark]) => sum + Number(mark.replace("−", "-")), 0);
}

test("from the first page to a module, to a step", async () => {
  const { page, troubles } = await visitor.open("");
  await page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Modules" }).click();
  await page
    .locator(`main a[href$="${sheet.path.replace("modules/", "")}index.html"]`)
    .first()
    .click();
  await page.waitForURL((url) => url.pathname.endsWith(sheet.file));
  const entry = page.getByRole("navigation", { name: "Order of work" }).getByRole("link").nth(4);
  const title = (await entry.textContent())!;
  await entry.click();
  const heading = page.getByRole("heading", { level: 3, name: title });
  await expect.poll(async () => (await heading.boundingBox())!.y).toBeLessThan(300);
  expect((await heading.boundingBox())!.y).toBeGreaterThanOrEqual(0);
  expect(troubles).toEqual([]);
});

test("beside each step stands its tray, and its count follows from the one before", async () => {
  const { page } = await visitor.open(sheet.path);
  const all = await trays(page).all();
  expect(all.length).toBeGreaterThan(10);
  let before = await totalOf(all[0]!);
  let most = before;
  for (const tray of all.slice(1)) {
    const total = await totalOf(tray);
    expect(total - before, await tray.innerText()).toBe(await changesOf(tray));
    before = total;
    most = Math.max(most, total);
  }
  expect(most).toBeGreaterThan(5);
});

test.each([
  { width: 1280, beside: true },
  { width: 360, beside: false },
])("at $width px the tray stands beside its step: $beside", async ({ width, beside }) => {
  const { page } = await visitor.open(sheet.path, { viewport: { width, height: 800 } });
  const heading = (await page
    .getByRole("heading", { level: 3 })
    .filter({ hasNotText: "Before work" })
    .nth(4)
    .boundingBox())!;
  const tray = (await trays(page).first().boundingBox())!;
  expect(tray.x > heading.x + 100).toBe(beside);
  expect(tray.x + tray.width).toBeLessThanOrEqual(width);
});

test("what must come before what is told in words as well", async () => {
  const { page } = await visitor.open(`${sheet.path}order/index.html`);
  const section = page.getByRole("region", { name: "The same in words" });
  expect(await section.getByRole("listitem").count()).toBeGreaterThan(10);
});

test("on a phone each row of a table in prose is an entry, whose cells bear their columns' names and break no word", async () => {
  const path = sitePages().find(({ html }) => html.includes('<table class="ruled">\n<thead>\n'))!.path;
  const { page } = await visitor.open(path, { viewport: { width: 320, height: 700 } });
  const cells = await page.evaluate(() =>
    [...document.querySelectorAll(".prose td")].map((cell) => ({
      name: cell.getAttribute("data-name") ?? "",
      said: getComputedStyle(cell, "::before").content,
      width: cell.clientWidth,
    })),
  );
  expect(cells.length).toBeGreaterThan(3);
  for (const { name, said, width } of cells) {
    expect(name).not.toBe("");
    expect(said).toContain(name);
    // The width of the page but for its margins.
    expect(width).toBeGreaterThan(250);
  }
  await page.setViewportSize({ width: 1280, height: 900 });
  const headed = page.locator(".prose tbody th").first();
  expect(await headed.evaluate((cell) => getComputedStyle(cell).display)).toBe("table-cell");
});
