import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import type { BenchData } from "../../src/model/page-data.ts";
import { axeViolations } from "./site/axe.ts";
import { benchWithWaits, card, devices, goToCard, said, stepIds, undo } from "./site/bench-steps.ts";
import { withBrowser } from "./site/browser.ts";
import { pageData } from "./site/pages.ts";

/** Several loads of a page in one test, on a machine that has much else to do; milliseconds. */
const patience = { timeout: 180_000 };
const visitor = withBrowser();
const bench = benchWithWaits();
const [short, long] = [...pageData<BenchData>(bench).waits].sort((one, other) => one.minutes - other.minutes);
const minute = 60_000;
/** The clock of the page is held; browsers of the tests stand in UTC. */
const noon = Date.UTC(2027, 2, 4, 12, 0, 0);
const setClock = (page: Page, time: number) => page.clock.setFixedTime(time);
const inUtc = { timezoneId: "UTC" };
const clockOf = (minutes: number): string => new Date(noon + minutes * minute).toISOString().slice(11, 16);

const start = (page: Page) => card(page).getByRole("button", { name: /^Start/ });
const strip = (page: Page) => page.locator(".waits-strip");

describe.each(devices)("on a $name", ({ options, hands }) => {
  const withClock = { ...options, ...inUtc };

  test(
    "a wait counts by the clock: through a reload, on other steps, until it is over and told",
    patience,
    async () => {
      const { page, troubles } = await visitor.open(bench.path, withClock);
      await setClock(page, noon);
      const number = (await stepIds(page)).indexOf(short!.step) + 1;
      await goToCard(page, short!.step);
      expect(await start(page).textContent()).toContain(short!.words);
      await hands.press(start(page));
      await page.getByText(`after step ${number} runs until ${clockOf(short!.minutes)}.`).waitFor();
      await goToCard(page, "s_before");
      expect(await strip(page).textContent()).toContain(`until ${clockOf(short!.minutes)}.`);
      await setClock(page, noon + (short!.minutes - 1) * minute);
      await expect.poll(() => strip(page).textContent()).toContain("1 min left");
      await page.reload();
      await expect.poll(() => strip(page).textContent()).toContain("1 min left");
      const told = page.locator(".bench-foot > [role=status]");
      expect(await told.textContent()).toBe("");
      await setClock(page, noon + (short!.minutes + 5) * minute);
      await expect
        .poll(() => told.textContent())
        .toContain(`after step ${number} is over (${clockOf(short!.minutes)})`);
      expect(await strip(page).textContent()).toContain(`over since ${clockOf(short!.minutes)}`);
      expect(await axeViolations(page)).toEqual([]);
      // Told once: who comes back sees it, and does not hear it again.
      await page.reload();
      await expect.poll(() => strip(page).textContent()).toContain("over since");
      expect(await told.textContent()).toBe("");
      expect(troubles).toEqual([]);
    },
  );

  test("one that ended while the page was away is told on coming back", async () => {
    const { page } = await visitor.open(bench.path, withClock);
    await setClock(page, noon);
    await goToCard(page, short!.step);
    await hands.press(start(page));
    await page.goto("about:blank");
    await setClock(page, noon + 24 * 60 * minute);
    await page.goBack();
    await expect.poll(() => page.locator(".bench-foot > [role=status]").textContent()).toContain("is over");
  });

  test("several run at once, are listed, stopped and put back", async () => {
    const { page } = await visitor.open(bench.path, withClock);
    await setClock(page, noon);
    for (const { step } of [long!, short!]) {
      await goToCard(page, step);
      await hands.press(start(page));
    }
    expect(await strip(page).textContent()).toContain(clockOf(short!.minutes));
    expect(await strip(page).textContent()).toContain("and 1 more");
    await hands.press(strip(page));
    const rows = page.locator(".waits-list li");
    expect(await rows.count()).toBe(2);
    expect(await axeViolations(page)).toEqual([]);
    await hands.press(rows.first().getByRole("button", { name: /^Stop the wait after step/ }));
    await expect.poll(() => rows.count()).toBe(1);
    expect(await said(page).textContent()).toMatch(/^The wait after step \d+ is stopped\.$/);
    await setClock(page, noon + 2 * minute);
    await hands.press(undo(page));
    await expect.poll(() => rows.count()).toBe(2);
    await expect.poll(() => rows.first().textContent()).toContain(`until ${clockOf(short!.minutes)}`);
  });
});

test("the sound is made only where it was switched on", patience, async () => {
  const { page } = await visitor.open(bench.path, inUtc);
  await page.addInitScript(() => {
    const start = AudioScheduledSourceNode.prototype.start;
    Reflect.set(globalThis, "notes", 0);
    AudioScheduledSourceNode.prototype.start = function (when) {
      Reflect.set(globalThis, "notes", Number(Reflect.get(globalThis, "notes")) + 1);
      start.call(this, when);
    };
  });
  const notes = () => page.evaluate(() => Number(Reflect.get(globalThis, "notes")));
  const end = async (from: number) => {
    await setClock(page, from);
    await goToCard(page, short!.step);
    await start(page).click();
    await setClock(page, from + short!.minutes * minute);
    await expect.poll(() => strip(page).textContent()).toContain("over since");
  };
  await page.reload();
  await end(noon);
  expect(await notes()).toBe(0);
  await page.getByText("Screen and sound").click();
  await page.getByRole("checkbox", { name: "A sound when a wait is over" }).check();
  await page.getByRole("button", { name: "Let me hear it" }).click();
  expect(await notes()).toBeGreaterThan(0);
  await page.reload();
  await page.getByText("Screen and sound").click();
  expect(await page.getByRole("checkbox", { name: "A sound when a wait is over" }).isChecked()).toBe(true);
  await page.getByRole("button", { name: "Put the timer away" }).click();
  await end(noon + 60 * minute);
  await expect.poll(notes).toBeGreaterThan(0);
});

test("by keys alone: a wait is started, found in the bar and stopped", async () => {
  const { page } = await visitor.open(bench.path, inUtc);
  await goToCard(page, short!.step);
  await start(page).focus();
  await page.keyboard.press("Enter");
  await strip(page).focus();
  await page.keyboard.press("Enter");
  expect(await strip(page).getAttribute("aria-expanded")).toBe("true");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator(".bench-waits").isVisible()).toBe(false);
  await undo(page).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => strip(page).isVisible()).toBe(true);
});
