import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { mergedReasons } from "../../src/engine/procedure/merged-reasons.ts";
import type { PracticeData } from "../../src/model/page-data.ts";
import { arrangeByKeys, orderOf } from "./site/arranging.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, pressByKey, tabTo } from "./site/keyboard.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
const practice = sitePages().find(({ kind }) => kind === "practice")!;
const task = pageData<PracticeData>(practice).practices[0]!;
const written = task.steps.map(({ title }) => title);

const listOn = (page: Page) => page.getByRole("list", { name: /your order/ });
const check = (page: Page) => page.getByRole("button", { name: "Check this order" });
/** What is said on an order, and has the focus then. */
const verdict = (page: Page) => page.getByRole("heading", { level: 3 }).and(page.locator("[tabindex='-1']"));

test("a step moves by Alt and arrow, keeps the focus and is announced", async () => {
  const { page, troubles } = await visitor.open(practice.path);
  const before = await orderOf(listOn(page));
  const row = page.getByRole("listitem").filter({ hasText: before[0]! }).first();
  await tabTo(page, row);
  await page.keyboard.press("Alt+ArrowDown");
  expect((await orderOf(listOn(page))).slice(0, 2)).toEqual([before[1], before[0]]);
  expect(await hasFocus(row)).toBe(true);
  await expect.poll(() => page.locator("[aria-live=polite]").textContent()).toContain(before[0]!);
  await page.keyboard.press("Alt+ArrowUp");
  expect(await orderOf(listOn(page))).toEqual(before);
  expect(troubles).toEqual([]);
});

test("a wrong order is told with reasons, 'Show me' mends it, and a reload keeps it", async () => {
  const { page, troubles } = await visitor.open(practice.path);
  await arrangeByKeys(page, listOn(page), written.toReversed());
  await pressByKey(page, check(page));
  expect(await verdict(page).textContent()).toMatch(/not right/i);
  expect(await hasFocus(verdict(page))).toBe(true);
  const reasons = await page.getByRole("listitem").filter({ hasText: "must come before" }).allTextContents();
  expect(reasons.length).toBeGreaterThan(0);
  const { because } = task.precedence.pairs[0]!;
  expect(reasons.join(" ").toLowerCase()).toContain(mergedReasons(because)[0]!.toLowerCase());
  expect(await axeViolations(page)).toEqual([]);
  await pressByKey(page, page.getByRole("button", { name: "Show me" }));
  const next = page.getByRole("button", { name: "Do this move" });
  for (let moves = 0; moves < written.length && (await next.isVisible()); moves++)
    await page.keyboard.press("Enter");
  expect(await verdict(page).textContent()).toContain("Now the order is right");
  const mended = await orderOf(listOn(page));
  await page.reload();
  expect(await orderOf(listOn(page))).toEqual(mended);
  await pressByKey(page, check(page));
  expect(await verdict(page).textContent()).toBe("This order is right.");
  expect(troubles).toEqual([]);
});

test("a right order is told so, and a reload keeps it", async () => {
  const { page, troubles } = await visitor.open(practice.path);
  await arrangeByKeys(page, listOn(page), written);
  expect(await orderOf(listOn(page))).toEqual(written);
  await pressByKey(page, check(page));
  expect(await verdict(page).textContent()).toBe("This order is right.");
  await page.reload();
  expect(await orderOf(listOn(page))).toEqual(written);
  await pressByKey(page, page.getByRole("button", { name: "Start again" }));
  expect(await orderOf(listOn(page))).not.toEqual(written);
  expect(troubles).toEqual([]);
});

test("it is done with the pointer too: by the buttons and by the handle", async () => {
  const { page } = await visitor.open(practice.path);
  const [first, second] = await orderOf(listOn(page));
  await page.getByRole("button", { name: `Down: ${first}`, exact: true }).click();
  expect((await orderOf(listOn(page))).slice(0, 2)).toEqual([second, first]);
  // Rows glide to their places; the pointer needs them where they stay.
  await page.waitForFunction(() => document.getAnimations().length === 0);
  const rows = await listOn(page).getByRole("listitem").all();
  const [from, to] = [await rows[0]!.boundingBox(), await rows[2]!.boundingBox()];
  await page.mouse.move(from!.x + 12, from!.y + from!.height / 2);
  await page.mouse.down();
  await page.mouse.move(to!.x + 12, to!.y + to!.height / 2 + 4, { steps: 10 });
  await page.mouse.up();
  expect((await orderOf(listOn(page))).slice(0, 3)).toContain(second);
  expect((await orderOf(listOn(page)))[0]).toBe(first);
});

test("every practice of the demo can be begun", async () => {
  for (const { path } of sitePages().filter(({ kind }) => kind === "practice")) {
    const { page, troubles } = await visitor.open(path);
    expect((await orderOf(listOn(page))).length, path).toBeGreaterThan(1);
    expect(troubles).toEqual([]);
    await page.context().close();
  }
});
