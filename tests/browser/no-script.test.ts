import { expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { pageOfEachKind } from "./site/pages.ts";

const visitor = withBrowser();

const needScript = [
  ...["practice", "dry-run", "quiz", "bench", "plain sums/", "plain faults/", "plain record/"],
  ...["plain about/", "plain check/", "plain desk/", "plain desk/evening/"],
];

test.each(pageOfEachKind())("$kind ($path) reads without JavaScript", async ({ path, kind }) => {
  const { page, troubles } = await visitor.open(path, { javaScriptEnabled: false });
  await expect.poll(() => page.getByRole("heading", { level: 1 }).isVisible()).toBe(true);
  expect((await page.getByRole("main").innerText()).length).toBeGreaterThan(200);
  // A button would do nothing here.
  expect(await page.getByRole("button").count()).toBe(0);
  expect(await page.getByText("needs JavaScript").count()).toBe(needScript.includes(kind) ? 1 : 0);
  expect(troubles).toEqual([]);
  await page.context().close();
});
