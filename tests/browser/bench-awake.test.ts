import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { benchWithWaits, devices } from "./site/bench-steps.ts";
import { withBrowser } from "./site/browser.ts";

const visitor = withBrowser();
const bench = benchWithWaits();

/** A screen that stays awake on demand, and counts. Whether Chromium grants it in a test depends on the machine. */
async function fakeScreen(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const locks: (EventTarget & { released: boolean })[] = [];
    Reflect.set(globalThis, "locks", locks);
    const request = async () => {
      const lock = Object.assign(new EventTarget(), {
        released: false,
        async release() {
          lock.released = true;
          lock.dispatchEvent(new Event("release"));
        },
      });
      locks.push(lock);
      return lock;
    };
    Object.defineProperty(Navigator.prototype, "wakeLock", { get: () => ({ request }) });
  });
  await page.reload();
}

const held = (page: Page) =>
  page.evaluate(
    () =>
      (Reflect.get(globalThis, "locks") as { released: boolean }[]).filter(({ released }) => !released)
        .length,
  );

/** The page is put away, as when a call comes in: the lock goes. */
const hide = (page: Page) =>
  page.evaluate(async () => {
    Object.defineProperty(document, "visibilityState", { value: "hidden", configurable: true });
    for (const lock of Reflect.get(globalThis, "locks") as { release(): Promise<void> }[])
      await lock.release();
    document.dispatchEvent(new Event("visibilitychange"));
  });

const comeBack = (page: Page) =>
  page.evaluate(() => {
    Object.defineProperty(document, "visibilityState", { value: "visible", configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
  });

const box = (page: Page) => page.getByRole("checkbox", { name: "Keep the screen awake" });
const state = (page: Page, words: string) => page.locator(".bench-more").getByText(words);

describe.each(devices)("on a $name", ({ options, hands }) => {
  test("the screen is kept awake, again after the page was away, until it is switched off", async () => {
    const { page } = await visitor.open(bench.path, options);
    await fakeScreen(page);
    await page.locator(".bench-before").getByText("The screen stays awake.").waitFor();
    await expect.poll(() => held(page)).toBe(1);
    await hide(page);
    expect(await held(page)).toBe(0);
    await comeBack(page);
    await expect.poll(() => held(page)).toBe(1);
    await hands.press(page.getByText("Screen and sound"));
    await hands.tick(box(page));
    await state(page, "The screen goes dark when this device wants it to.").waitFor();
    expect(await held(page)).toBe(0);
    await page.reload();
    await hands.press(page.getByText("Screen and sound"));
    expect(await box(page).isChecked()).toBe(false);
    expect(await held(page)).toBe(0);
    await hands.tick(box(page));
    await state(page, "The screen stays awake.").waitFor();
    await expect.poll(() => held(page)).toBe(1);
  });

  test("a browser that can't says so", async () => {
    const { page } = await visitor.open(bench.path, options);
    await page.addInitScript(() => {
      Reflect.deleteProperty(Navigator.prototype, "wakeLock");
    });
    await page.reload();
    await page
      .locator(".bench-before")
      .getByText(/can’t keep the screen awake: set a longer/)
      .waitFor();
    await hands.press(page.getByText("Screen and sound"));
    expect(await box(page).isDisabled()).toBe(true);
  });
});
