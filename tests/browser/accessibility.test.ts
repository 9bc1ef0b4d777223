import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { pageOfEachKind } from "./site/pages.ts";

const visitor = withBrowser();

const looks = [360, 1280].flatMap((width) =>
  (["light", "dark"] as const).map((colorScheme) => ({ width, colorScheme })),
);

describe.each(pageOfEachKind())("$kind ($path)", ({ path }) => {
  let page: Page;
  beforeAll(async () => {
    page = (await visitor.open(path)).page;
  });
  afterAll(() => page.context().close());

  test.each(looks)("keeps the rules of axe at $width px, $colorScheme", async ({ width, colorScheme }) => {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    expect(await axeViolations(page)).toEqual([]);
  });
});

test("a planted fault is found", async () => {
  const { page } = await visitor.open("");
  await page.evaluate(() => document.querySelector("main")?.append(document.createElement("img")));
  expect((await axeViolations(page)).join()).toContain("image-alt");
});
