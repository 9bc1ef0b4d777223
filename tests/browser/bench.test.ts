import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { sitePages } from "./site/pages.ts";

const visitor = withBrowser();
const bench = sitePages().find(({ kind }) => kind === "bench")!;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true };

const steps = (page: Page) => page.getByRole("heading", { level: 3 }).and(page.locator(".step h3"));
const next = (page: Page) => page.getByRole("button", { name: "Next" });

async function visibleSteps(page: Page): Promise<string[]> {
  const all = await steps(page).all();
  const visible = await Promise.all(
    all.map(async (step) => ((await step.isVisible()) ? ((await step.textContent()) ?? "") : undefined)),
  );
  return visible.filter((title) => title !== undefined);
}

test("one step at a time, forwards and back, by button and by key", async () => {
  const { page, troubles } = await visitor.open(bench.path, phone);
  expect(await visibleSteps(page)).toEqual([]);
  await next(page).click();
  const [first, ...more] = await visibleSteps(page);
  expect(more).toEqual([]);
  await page.keyboard.press("ArrowRight");
  const second = await visibleSteps(page);
  expect(second).toHaveLength(1);
  expect(second).not.toEqual([first]);
  expect(await axeViolations(page)).toEqual([]);
  await page.getByRole("button", { name: "Back" }).click();
  expect(await visibleSteps(page)).toEqual([first]);
  expect(troubles).toEqual([]);
});

test("the place and what is ticked off are kept", async () => {
  const { page } = await visitor.open(bench.path, phone);
  await next(page).click();
  await next(page).click();
  await page.getByRole("checkbox", { name: "Done" }).check();
  const shown = await visibleSteps(page);
  await page.goto(page.url().split("#")[0]!);
  await page.reload();
  expect(await visibleSteps(page)).toEqual(shown);
  expect(await page.getByRole("checkbox", { name: "Done" }).isChecked()).toBe(true);
});

test("what was kept is told on coming back, with a way to the beginning; starting over is asked twice", async () => {
  const { page, troubles } = await visitor.open(bench.path, phone);
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.getByRole("checkbox", { name: "Done" }).check();
  await page.goto(page.url().split("#")[0]!);
  await page.reload();
  const note = page.getByText(/You were here, at step 2 of/);
  expect(await note.isVisible()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  await page.getByRole("link", { name: "To the beginning" }).click();
  expect(await visibleSteps(page)).toEqual([]);
  expect(await note.count()).toBe(0);
  const over = page.getByRole("button", { name: "Start over with another machine" });
  await over.click();
  await page.getByRole("button", { name: "No, leave it" }).click();
  expect(await over.isVisible()).toBe(true);
  await over.click();
  await page.getByRole("button", { name: "Yes, start over" }).click();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  expect(await page.getByRole("checkbox", { name: "Done" }).isChecked()).toBe(false);
  expect(troubles).toEqual([]);
});

test("a foot switch that sends Enter comes to the next step, not past what is below", async () => {
  const { page } = await visitor.open(bench.path, phone);
  await page.keyboard.press("ArrowRight");
  const [first] = await visibleSteps(page);
  await page.keyboard.press("Enter");
  expect(await visibleSteps(page)).toEqual([first]);
  for (let press = 0; press < 40 && (await visibleSteps(page))[0] === first; press++)
    await page.keyboard.press("Enter");
  expect(await visibleSteps(page)).not.toEqual([first]);
});

test("targets are big enough for dirty hands", async () => {
  const { page } = await visitor.open(bench.path, phone);
  for (const name of ["Next", "Back"]) {
    const { width, height } = (await page.getByRole("button", { name }).boundingBox())!;
    // WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 CSS pixels.
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  }
});
