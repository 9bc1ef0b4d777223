/** The page on the order of steps: its drawing by keyboard, on a phone and on paper. */
import { expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, tabTo } from "./site/keyboard.ts";
import { pageOfEachKind } from "./site/pages.ts";

const visitor = withBrowser();
const { path } = pageOfEachKind().find(({ kind }) => kind === "order")!;
const drawing = "Drawing of what must come before what";

test("on a phone the drawing scrolls by keyboard, and the page itself does not", async () => {
  const { page, troubles } = await visitor.open(path, { viewport: { width: 360, height: 800 } });
  const region = page.getByRole("group", { name: drawing });
  await tabTo(page, region);
  expect(await region.evaluate((element) => element.scrollWidth > element.clientWidth)).toBe(true);
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => region.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  expect(troubles).toEqual([]);
});

test("each box takes the focus, shows it, comes into sight and leads to its step", async () => {
  const { page, troubles } = await visitor.open(path, { viewport: { width: 360, height: 800 } });
  const boxes = page.getByRole("group", { name: drawing }).getByRole("link");
  const last = boxes.last();
  expect(await boxes.count()).toBeGreaterThan(10);
  await tabTo(page, boxes.first());
  for (let moves = 1; moves < (await boxes.count()); moves++) await page.keyboard.press("Tab");
  expect(await hasFocus(last)).toBe(true);
  const { style, width } = await last.evaluate((element) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(element);
    return { style: outlineStyle, width: Number.parseFloat(outlineWidth) };
  });
  expect(style).not.toBe("none");
  expect(width).toBeGreaterThanOrEqual(2);
  const ends = async () => {
    const { x, width: wide } = (await last.boundingBox())!;
    return [x >= 0, x + wide <= 360];
  };
  await expect.poll(ends).toEqual([true, true]);
  const number = Number.parseInt((await last.textContent()) ?? "", 10);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/modules\/[^/]+\/(index\.html)?#/);
  const step = page.locator(`#${new URL(page.url()).hash.slice(1)}`);
  expect(await step.getByRole("heading", { level: 3 }).innerText()).toMatch(RegExp(`^${number}\\s`));
  expect(troubles).toEqual([]);
});

test("on paper the drawing is as wide as the paper at most, and no band is cut", async () => {
  // A4 less the margins is 188 mm wide: 710 px.
  const { page } = await visitor.open(path, { viewport: { width: 710, height: 1000 } });
  await page.emulateMedia({ media: "print" });
  const { widths, breaks } = await page.evaluate(() => {
    const bands = [...document.querySelectorAll(".band")];
    return {
      widths: bands.map((band) => band.querySelector("svg")!.getBoundingClientRect().right),
      breaks: bands.map((band) => getComputedStyle(band).breakInside),
    };
  });
  expect(widths.length).toBeGreaterThan(1);
  for (const right of widths) expect(right).toBeLessThanOrEqual(710);
  expect(new Set(breaks)).toEqual(new Set(["avoid"]));
});

test("where writing runs from right to left, number and title still lie in their box", async () => {
  const { page } = await visitor.open(path, { viewport: { width: 1280, height: 900 } });
  await page.evaluate(() => {
    document.documentElement.dir = "rtl";
  });
  const outside = await page.evaluate(() =>
    [...document.querySelectorAll(".drawing a")].flatMap((box) => {
      const { left, right } = box.querySelector("rect")!.getBoundingClientRect();
      return [...box.querySelectorAll("text")]
        .map((text) => ({ text: text.textContent, place: text.getBoundingClientRect() }))
        .filter(({ place }) => place.left < left || place.right > right)
        .map(({ text }) => text);
    }),
  );
  expect(await page.locator(".drawing a").count()).toBeGreaterThan(10);
  expect(outside).toEqual([]);
});
