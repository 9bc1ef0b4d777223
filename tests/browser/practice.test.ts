import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { answerOrder } from "../../src/engine/procedure/answer-order.ts";
import { mergedReasons } from "../../src/engine/procedure/merged-reasons.ts";
import { performingGraph } from "../../src/engine/procedure/performing-graph.ts";
import type { PracticeData } from "../../src/model/page-data.ts";
import { arrangeByKeys, orderOf } from "./site/arranging.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, pressByKey, tabTo } from "./site/keyboard.ts";
import { pageData, sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** One that asks for all its steps. */
const practice = sitePages().find(
  (page) => page.kind === "practice" && pageData<PracticeData>(page).practices[0]!.mixedIn.length === 0,
)!;
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

test("a right order that only the author's leave makes right is told so, with the reason", async () => {
  const found = sitePages()
    .filter(({ kind }) => kind === "practice")
    .flatMap((page) => pageData<PracticeData>(page).practices.map((task) => ({ page, task })))
    .find(({ task }) => task.swaps.length > 0 && task.mixedIn.length === 0)!;
  const { first, then, because } = found.task.swaps[0]!;
  const titles = new Map(found.task.steps.map(({ id, title }) => [id, title]));
  const graph = performingGraph(found.task.precedence);
  const ids = found.task.steps.map(({ id }) => id);
  const turned = ids.filter((id) => id !== then).toSpliced(ids.indexOf(first), 0, then);
  expect(answerOrder(graph, turned).valid).toBe(true);
  const { page, troubles } = await visitor.open(`${found.page.path}#practice-${found.task.id}`);
  await arrangeByKeys(
    page,
    listOn(page),
    turned.map((id) => titles.get(id)!),
  );
  await pressByKey(page, check(page));
  expect(await verdict(page).textContent()).toBe("This order is right.");
  const told = page.getByRole("listitem").filter({ hasText: because });
  expect(await told.textContent()).toContain(`“${titles.get(then)}” before “${titles.get(first)}”`);
  expect(await axeViolations(page)).toEqual([]);
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

test("a step that does not belong is left out by keys, put back, and counts where it stays in", async () => {
  const mixed = sitePages()
    .filter(({ kind }) => kind === "practice")
    .map((page) => ({ path: page.path, job: pageData<PracticeData>(page).practices[0]! }))
    .find(({ job }) => job.mixedIn.length > 0)!;
  const [stray] = mixed.job.mixedIn.map(({ title }) => title);
  const asked = mixed.job.steps.map(({ title }) => title);
  const { page, troubles } = await visitor.open(mixed.path);
  const said = () => page.locator("[aria-live=polite]").textContent();
  const row = listOn(page).getByRole("listitem").filter({ hasText: stray! });
  const back = page.getByRole("button", { name: `Put back: ${stray}`, exact: true });
  expect([...(await orderOf(listOn(page)))].sort()).toEqual([...asked, stray].sort());
  await tabTo(page, row);
  await page.keyboard.press("Delete");
  expect(await hasFocus(back)).toBe(true);
  expect([...(await orderOf(listOn(page)))].sort()).toEqual([...asked].sort());
  await expect.poll(said).toContain(`${stray}: not in this job; ${asked.length} steps left in your order`);
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press("Enter");
  expect(await hasFocus(row)).toBe(true);
  expect((await orderOf(listOn(page))).at(-1)).toBe(stray);
  await expect.poll(said).toContain(`${stray}: now ${asked.length + 1} of ${asked.length + 1}`);
  await arrangeByKeys(page, listOn(page), [...asked, stray!]);
  await pressByKey(page, check(page));
  expect(await page.getByText(`“${stray}” does not belong to this job.`).count()).toBe(1);
  expect(await page.getByText("1 step does not belong here. 1 move mends it.").count()).toBe(1);
  await pressByKey(page, page.getByRole("button", { name: `Leave out: ${stray}`, exact: true }), "Shift+Tab");
  await pressByKey(page, check(page));
  expect(await verdict(page).textContent()).toBe("This order is right.");
  await page.reload();
  expect(await orderOf(listOn(page))).toEqual(asked);
  expect(await back.count()).toBe(1);
  expect(troubles).toEqual([]);
});

test("a step of the job that was left out is missed, and 'Show me' puts it back in its place", async () => {
  const mixed = sitePages()
    .filter(({ kind }) => kind === "practice")
    .map((page) => ({ path: page.path, job: pageData<PracticeData>(page).practices[0]! }))
    .find(({ job }) => job.mixedIn.length > 0)!;
  const [first] = mixed.job.steps.map(({ title }) => title);
  const { page, troubles } = await visitor.open(mixed.path);
  await page.getByRole("button", { name: `Leave out: ${first}`, exact: true }).click();
  await pressByKey(page, check(page));
  expect(await page.getByText(`“${first}” belongs to this job and was left out.`).count()).toBe(1);
  await pressByKey(page, page.getByRole("button", { name: "Show me" }));
  const next = page.getByRole("button", { name: "Do this move" });
  for (let moves = 0; moves < 20 && (await next.isVisible()); moves++) await page.keyboard.press("Enter");
  expect(await verdict(page).textContent()).toContain("Now the order is right");
  const titles = [...mixed.job.steps].map(({ title }) => title).sort();
  expect([...(await orderOf(listOn(page)))].sort()).toEqual(titles);
  expect(troubles).toEqual([]);
});

/** How many things are moving right after a press, before a picture of it was drawn. */
const movingAfter = (pressed: Locator): Promise<number> =>
  pressed.evaluate((button: HTMLElement) => {
    button.click();
    return document.getAnimations().length;
  });

test.each([
  { reducedMotion: "no-preference", glides: true },
  { reducedMotion: "reduce", glides: false },
] as const)(
  "with $reducedMotion of motion rows glide: $glides; all else is the same",
  async ({ reducedMotion, glides }) => {
    const { page } = await visitor.open(practice.path, { reducedMotion });
    await arrangeByKeys(page, listOn(page), written.toReversed());
    await check(page).click();
    await page.getByRole("button", { name: "Show me" }).click();
    const next = page.getByRole("button", { name: "Do this move" });
    const moving: boolean[] = [];
    while (await next.isVisible()) moving.push((await movingAfter(next)) > 0);
    expect(moving.length).toBeGreaterThan(1);
    expect(new Set(moving)).toEqual(new Set([glides]));
    expect(await verdict(page).textContent()).toContain("Now the order is right");
  },
);

test("every practice of the demo can be begun", async () => {
  for (const { path } of sitePages().filter(({ kind }) => kind === "practice")) {
    const { page, troubles } = await visitor.open(path);
    expect((await orderOf(listOn(page))).length, path).toBeGreaterThan(1);
    expect(troubles).toEqual([]);
    await page.context().close();
  }
});
