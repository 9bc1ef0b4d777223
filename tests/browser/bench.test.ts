import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import {
  benchWithWaits,
  card,
  devices,
  done,
  goToCard,
  next,
  said,
  stepIds,
  undo,
} from "./site/bench-steps.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus } from "./site/keyboard.ts";

const visitor = withBrowser();
const bench = benchWithWaits();
const phone = devices[0]!.options;

async function visibleSteps(page: Page): Promise<string[]> {
  const all = await page.locator(".step h3").all();
  const visible = await Promise.all(
    all.map(async (step) => ((await step.isVisible()) ? ((await step.textContent()) ?? "") : undefined)),
  );
  return visible.filter((title) => title !== undefined);
}

test("where less motion is wanted, turning to a step shows it at once, at its place", async () => {
  const { page } = await visitor.open(bench.path, { ...phone, reducedMotion: "reduce" });
  const turned = await next(page).evaluate((button: HTMLElement) => {
    scrollTo(0, document.body.scrollHeight);
    button.click();
    const top = () => Math.round(document.querySelector(".step:not(.is-away)")!.getBoundingClientRect().top);
    const [moving, at] = [document.getAnimations().length, top()];
    return new Promise<{ moving: number; way: number; isInView: boolean }>((done) =>
      requestAnimationFrame(() =>
        requestAnimationFrame(() =>
          done({ moving, way: top() - at, isInView: at >= 0 && at < innerHeight / 2 }),
        ),
      ),
    );
  });
  expect(turned).toEqual({ moving: 0, way: 0, isInView: true });
});

// WCAG 2.2, 2.4.7 Focus Visible.
test("the link to the operation sheet, which a card has no room for, is seen while it has the focus", async () => {
  const { page } = await visitor.open(bench.path, phone);
  await next(page).click();
  const link = page.locator(".sheet-head a");
  const isOnTop = () =>
    link.evaluate((element) => {
      const { left, top } = element.getClientRects()[0]!;
      return element.contains(document.elementFromPoint(left + 8, top + 8));
    });
  expect(await isOnTop()).toBe(false);
  await link.focus();
  expect(await isOnTop()).toBe(true);
});

describe.each(devices)("on a $name", ({ options, hands }) => {
  test("one step at a time, forwards and back, by button and by key", async () => {
    const { page, troubles } = await visitor.open(bench.path, options);
    expect(await visibleSteps(page)).toEqual([]);
    await hands.press(next(page));
    const [first, ...more] = await visibleSteps(page);
    expect(more).toEqual([]);
    expect(await hasFocus(card(page).locator("h3"))).toBe(true);
    await page.keyboard.press("ArrowRight");
    const second = await visibleSteps(page);
    expect(second).toHaveLength(1);
    expect(second).not.toEqual([first]);
    await hands.press(page.getByRole("button", { name: "Back", exact: true }));
    expect(await visibleSteps(page)).toEqual([first]);
    expect(troubles).toEqual([]);
  });

  test("a tick moves nothing away, is told, and taken back; progress is told in numbers", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await hands.press(next(page));
    const shown = await visibleSteps(page);
    await hands.tick(done(page));
    expect(await visibleSteps(page)).toEqual(shown);
    expect(await said(page).textContent()).toBe("Step 2 ticked off.");
    const total = (await stepIds(page)).length;
    await page.getByText(`Step 2 of ${total} · 1 ticked off`).waitFor();
    await hands.press(undo(page));
    expect(await done(page).isChecked()).toBe(false);
    expect(await said(page).textContent()).toBe("Step 2 is open again.");
    expect(await undo(page).isVisible()).toBe(false);
    expect(await hasFocus(done(page))).toBe(true);
    await page.getByText(`Step 2 of ${total} · 0 ticked off`).waitFor();
  });

  test("the check of a step has a box of its own, which is kept", async () => {
    const { page } = await visitor.open(bench.path, options);
    const withCheck = page.locator(".step:has(.lines > .check)").first();
    await goToCard(page, (await withCheck.getAttribute("id"))!);
    const box = withCheck.locator(".check").getByRole("checkbox");
    await hands.tick(box);
    expect(await done(page).isChecked()).toBe(false);
    await page.reload();
    expect(await box.isChecked()).toBe(true);
    await goToCard(page, "s_after");
    const title = await withCheck.locator("h3").evaluate((heading) => heading.textContent);
    const unseen = page
      .getByRole("heading", { name: "Checks not ticked" })
      .locator("xpath=following-sibling::ul[1]");
    expect(await unseen.textContent()).not.toContain(title);
  });

  test("the place and what is ticked off are kept, and told on coming back", async () => {
    const { page, troubles } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await hands.press(next(page));
    await hands.tick(done(page));
    const shown = await visibleSteps(page);
    await page.goto(page.url().split("#")[0]!);
    await page.reload();
    expect(await visibleSteps(page)).toEqual(shown);
    expect(await done(page).isChecked()).toBe(true);
    const note = page.getByText(/You were here, at step 2 of/);
    expect(await note.isVisible()).toBe(true);
    await hands.press(page.getByRole("link", { name: "To the beginning" }));
    expect(await visibleSteps(page)).toEqual([]);
    expect(await note.count()).toBe(0);
    expect(troubles).toEqual([]);
  });

  test("starting over is asked first, and taken back as a whole", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await hands.tick(done(page));
    await goToCard(page, "s_before");
    const over = page.getByRole("button", { name: "Start over with another machine" });
    await hands.press(over);
    await hands.press(page.getByRole("button", { name: "No, leave it" }));
    expect(await over.isVisible()).toBe(true);
    await hands.press(over);
    await hands.press(page.getByRole("button", { name: "Yes, start over" }));
    await page.getByText(/· 0 of \d+ ticked off/).waitFor();
    await hands.press(undo(page));
    await page.getByText(/· 1 of \d+ ticked off/).waitFor();
    await hands.press(next(page));
    expect(await done(page).isChecked()).toBe(true);
  });

  test("what is pressed is at least 56 px high and wide and lies 8 px apart; steps are read at arm's length", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await hands.tick(done(page));
    const targets = page.locator(".bench button:visible, .bench summary:visible, .bench label:visible");
    const boxes = await Promise.all((await targets.all()).map((each) => each.boundingBox()));
    expect(boxes.length).toBeGreaterThan(5);
    // WCAG 2.2, 2.5.5 asks for 44; gloves and grease for more (what this workshop uses).
    for (const box of boxes) expect(Math.min(box!.width, box!.height)).toBeGreaterThanOrEqual(56);
    const [back, tick, on] = await Promise.all(
      [page.getByRole("button", { name: "Back", exact: true }), page.locator(".bench-tick"), next(page)].map(
        (each) => each.boundingBox(),
      ),
    );
    expect(tick!.x - back!.x - back!.width).toBeGreaterThanOrEqual(8);
    expect(on!.x - tick!.x - tick!.width).toBeGreaterThanOrEqual(8);
    const sizeOf = (selector: string): Promise<number> =>
      card(page)
        .locator(selector)
        .first()
        .evaluate((each) => Number.parseFloat(getComputedStyle(each).fontSize) / 16);
    expect(await sizeOf(".prose")).toBeGreaterThanOrEqual(1.4);
    expect(await sizeOf(".prose")).toBeLessThanOrEqual(1.6);
    expect(await sizeOf("h3")).toBeGreaterThan(await sizeOf(".prose"));
  });

  test("on paper every step stands, and nothing that is pressed", async () => {
    const { page } = await visitor.open(bench.path, options);
    await hands.press(next(page));
    await page.emulateMedia({ media: "print" });
    expect(await visibleSteps(page)).toHaveLength((await stepIds(page)).length);
    expect(await page.locator(".bench button:visible, .bench input:visible").count()).toBe(0);
  });
});

test.each(["light", "dark"] as const)(
  "no rule of accessibility is broken, %s",
  { timeout: 180_000 },
  async (colorScheme) => {
    for (const { options, hands } of devices) {
      const { page, troubles } = await visitor.open(bench.path, { ...options, colorScheme });
      expect(await axeViolations(page)).toEqual([]);
      await goToCard(page, (await stepIds(page))[1]!);
      await hands.tick(done(page));
      for (const summary of await page.locator(".bench-more summary").all()) await hands.press(summary);
      // The bar at the foot stands before what is not scrolled to yet.
      await page
        .locator(".bench-wait-act:visible, .bench-more:visible")
        .first()
        .evaluate((it) => {
          it.scrollIntoView({ block: "center" });
        });
      expect(await axeViolations(page)).toEqual([]);
      await goToCard(page, "s_after");
      expect(await axeViolations(page)).toEqual([]);
      expect(troubles).toEqual([]);
    }
  },
);

test("on a narrow screen the tray is a counted strip that stays in sight and opens in full", async () => {
  const { page } = await visitor.open(bench.path, phone);
  await page.keyboard.press("ArrowRight");
  const ids = await stepIds(page);
  await goToCard(page, ids[Math.floor(ids.length / 2)]!);
  const strip = card(page).locator(".tray-strip");
  const list = card(page).locator(".tray dl");
  // The account that the build prints, counted again here.
  const total = Number(await card(page).locator(".tray-total b").textContent());
  expect(await strip.textContent()).toContain(`Tray: ${total} off`);
  expect(await list.isVisible()).toBe(false);
  await page.evaluate(() => scrollBy(0, 400));
  await expect.poll(async () => (await strip.boundingBox())!.y).toBeLessThan(4);
  const box = (await card(page).locator(".tray").boundingBox())!;
  expect(box.height).toBeLessThan(80);
  await strip.tap();
  expect(await strip.getAttribute("aria-expanded")).toBe("true");
  expect(await list.isVisible()).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press("Escape");
  expect(await list.isVisible()).toBe(false);
});

test("where there is room the tray stands beside the step, and at a low screen the bar at its side", async () => {
  const { page } = await visitor.open(bench.path);
  await next(page).click();
  expect(await card(page).locator(".tray dl").isVisible()).toBe(true);
  expect(await card(page).locator(".tray-strip").isVisible()).toBe(false);
  await page.setViewportSize({ width: 740, height: 360 });
  const bar = (await page.locator(".bench-bar").boundingBox())!;
  expect(bar.x).toBeGreaterThan(740 / 2);
  expect(bar.height).toBe(360);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(740);
});

test("nothing is asked of the network once the page is there", async () => {
  const { page, troubles } = await visitor.open(bench.path, phone);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.context().setOffline(true);
  for (const _ of [1, 2, 3]) await next(page).tap();
  await done(page).tap();
  await page.getByRole("button", { name: "Hand over to another device" }).tap();
  await page.getByRole("img", { name: "Code of the link" }).waitFor();
  expect(asked).toEqual([]);
  expect(troubles).toEqual([]);
});

test("a browser that keeps nothing says so, and all else works", async () => {
  const { page, troubles } = await visitor.open(bench.path, phone);
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await page.reload();
  const note = page.getByText(/keeps nothing from one visit to the next/);
  expect(await note.count()).toBe(1);
  await next(page).tap();
  await done(page).tap();
  await next(page).tap();
  await page.getByText(/Step 2 of \d+ · 1 ticked off/).waitFor();
  expect(troubles).toEqual([]);
});

test("of two windows each stands at its own step, and a tick in one is no loss to the other", async () => {
  const { page } = await visitor.open(bench.path);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await next(other).click();
  await next(page).click();
  await next(page).click();
  const [first, second] = await stepIds(page);
  await done(page).check();
  await expect.poll(() => other.getByText("· 1 ticked off").count()).toBe(1);
  expect(await card(other).getAttribute("id")).toBe(first);
  expect(await done(other).isChecked()).toBe(false);
  await done(other).check();
  await expect.poll(() => page.getByText("· 2 ticked off").count()).toBe(1);
  expect(await card(page).getAttribute("id")).toBe(second);
  await page.reload();
  await page.getByText("· 2 ticked off").waitFor();
});
