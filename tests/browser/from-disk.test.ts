import { pathToFileURL } from "node:url";
import { expect, inject, test } from "vitest";
import type { PracticeData } from "../../src/model/page-data.ts";
import { arrangeByKeys, orderOf } from "./site/arranging.ts";
import { withBrowser } from "./site/browser.ts";
import { pageData, sitePages } from "./site/pages.ts";

/** The site as files, opened without any server. */
const visitor = withBrowser(`${pathToFileURL(inject("siteDir")).href}/`);

test("one reads from page to page", async () => {
  const { page, troubles } = await visitor.open("index.html");
  await page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Modules" }).click();
  await page.getByRole("main").getByRole("rowheader").getByRole("link").first().click();
  await page.getByRole("link", { name: "Practise the order" }).click();
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("Practise");
  expect(troubles).toEqual([]);
});

test("practice works and is kept", async () => {
  const practice = sitePages().find(
    (page) => page.kind === "practice" && pageData<PracticeData>(page).practices[0]!.mixedIn.length === 0,
  )!;
  const written = pageData<PracticeData>(practice).practices[0]!.steps.map(({ title }) => title);
  const { page, troubles } = await visitor.open(practice.file);
  const list = page.getByRole("list", { name: /your order/ });
  await arrangeByKeys(page, list, written);
  await page.getByRole("button", { name: "Check this order" }).click();
  expect(await page.getByRole("heading", { name: "This order is right." }).isVisible()).toBe(true);
  await page.reload();
  expect(await orderOf(list)).toEqual(written);
  expect(troubles).toEqual([]);
});

test("search works", async () => {
  const { page, troubles } = await visitor.open("search/index.html");
  await page.getByRole("searchbox").fill("screw");
  await page.getByRole("region", { name: "Found" }).getByRole("link").first().click();
  expect(await page.getByRole("heading", { level: 1 }).count()).toBe(1);
  expect(troubles).toEqual([]);
});

test("a sum works, and its link brings it back", async () => {
  const { page, troubles } = await visitor.open("sums/index.html");
  const section = page.getByRole("region", { name: "A thread by its name" });
  await section.getByLabel("Thread").fill("2 BA");
  await page.keyboard.press("Enter");
  // BS 93: 0.81 mm.
  expect(await section.getByText("0.81 mm", { exact: true }).isVisible()).toBe(true);
  await page.reload();
  await section.getByText("0.81 mm", { exact: true }).waitFor();
  await section.getByRole("link", { name: "Link to this sum" }).click();
  await section.getByText("0.81 mm", { exact: true }).waitFor();
  expect(troubles).toEqual([]);
});
