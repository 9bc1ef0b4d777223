import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { benchWithWaits, card, devices, done, next } from "./site/bench-steps.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, tabTo } from "./site/keyboard.ts";

const visitor = withBrowser();
const bench = benchWithWaits();
/** So often a switch is pressed at most until the page turns. */
const patience = 60;

const shown = (page: Page) => card(page).getAttribute("id");
const teach = (page: Page, name: RegExp) =>
  page.getByRole("button", { name }).and(page.locator("[aria-label^=Teach]"));

async function firstStep(page: Page): Promise<string> {
  await page.keyboard.press("ArrowRight");
  return (await shown(page))!;
}

/** How often a key is pressed until another step is shown. */
async function pressesToTurn(page: Page, key: string): Promise<number> {
  const from = await shown(page);
  for (let presses = 1; presses <= patience; presses++) {
    await page.keyboard.press(key);
    if ((await shown(page)) !== from) return presses;
  }
  throw new Error(`${patience} presses of ${key} do not turn the page`);
}

describe.each(devices)("on a $name", ({ options }) => {
  test.each(["PageDown", "Enter", "Space"])(
    "a foot switch that sends %s goes through the step, then on",
    async (key) => {
      const { page } = await visitor.open(bench.path, options);
      await firstStep(page);
      const presses = await pressesToTurn(page, key);
      // Nothing is passed by: each press but the last goes on by less than what is in sight.
      expect(presses).toBeGreaterThan(1);
      expect(await hasFocus(card(page).locator("h3"))).toBe(true);
    },
  );

  test("Page Up goes back from the top", async () => {
    const { page } = await visitor.open(bench.path, options);
    const first = await firstStep(page);
    await next(page).click();
    await pressesToTurn(page, "PageUp");
    expect(await shown(page)).toBe(first);
  });

  test("a key is taught by pressing it, is kept, and is cleared", async () => {
    const { page, troubles } = await visitor.open(bench.path, options);
    const first = await firstStep(page);
    await page.keyboard.press("b");
    await page.keyboard.press("t");
    expect(await shown(page)).toBe(first);
    expect(await done(page).isChecked()).toBe(false);
    await page.getByText("Keys and foot switch").click();
    await teach(page, /Tick the step off/).click();
    await page.keyboard.press("t");
    await page.getByText("T is learnt.").waitFor();
    await teach(page, /: On/).click();
    await page.keyboard.press("b");
    await page.getByText("B is learnt.").waitFor();
    expect(await axeViolations(page)).toEqual([]);
    await page.reload();
    await page.keyboard.press("t");
    expect(await done(page).isChecked()).toBe(true);
    await pressesToTurn(page, "b");
    await page.getByText("Keys and foot switch").click();
    await page.getByRole("button", { name: /^Clear the key: Tick/ }).click();
    expect(await hasFocus(teach(page, /Tick the step off/))).toBe(true);
    await page.keyboard.press("t");
    expect(await done(page).isChecked()).toBe(false);
    expect(troubles).toEqual([]);
  });
});

test("Escape and Tab end the teaching, and nothing is learnt", async () => {
  const { page } = await visitor.open(bench.path);
  await page.getByText("Keys and foot switch").click();
  await teach(page, /: Back/).click();
  await page.keyboard.press("Escape");
  await page.getByText("No key was taught.").waitFor();
  await page.keyboard.press("b");
  expect(await page.getByText("No key of your own").count()).toBe(3);
  await teach(page, /: Back/).click();
  await page.keyboard.press("Tab");
  expect(await hasFocus(teach(page, /: Back/))).toBe(false);
  await page.keyboard.press("b");
  expect(await page.getByText("No key of your own").count()).toBe(3);
});

test("a taught letter is typed into a field, and turns nothing in a panel", async () => {
  const { page } = await visitor.open(bench.path);
  await page.getByText("Keys and foot switch").click();
  await teach(page, /Tick the step off/).click();
  await page.keyboard.press("t");
  const first = await firstStep(page);
  await page.getByRole("button", { name: "Hand over to another device" }).click();
  await page.getByLabel("Link", { exact: true }).focus();
  await page.keyboard.press("t");
  await page.keyboard.press("ArrowRight");
  await page.getByRole("button", { name: "Close" }).focus();
  await page.keyboard.press("t");
  await page.keyboard.press("Escape");
  expect(await shown(page)).toBe(first);
  expect(await done(page).isChecked()).toBe(false);
});

test("everything is reached and pressed by keys: tray, tick, settings, handing over", async () => {
  const { page } = await visitor.open(bench.path, devices[0]!.options);
  await firstStep(page);
  const strip = card(page).locator(".tray-strip");
  await tabTo(page, strip);
  await page.keyboard.press("Enter");
  expect(await strip.getAttribute("aria-expanded")).toBe("true");
  await page.keyboard.press("Escape");
  const settings = page.getByText("Screen and sound");
  await tabTo(page, settings);
  await page.keyboard.press("Enter");
  await tabTo(page, page.getByRole("checkbox", { name: "A sound when a wait is over" }));
  await page.keyboard.press("Space");
  await tabTo(page, done(page));
  await page.keyboard.press("Space");
  expect(await done(page).isChecked()).toBe(true);
  const handOver = page.getByRole("button", { name: "Hand over to another device" });
  await tabTo(page, handOver, "Shift+Tab");
  await page.keyboard.press("Enter");
  await page.getByRole("dialog", { name: "Hand over the place" }).waitFor();
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  expect(await hasFocus(handOver)).toBe(true);
});
