/** A module in one file, opened from disk: everything in it works, and nothing is asked for. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { oneScript } from "../../src/bundle/one-script.ts";
import type { PracticeData, QuizData } from "../../src/model/page-data.ts";
import { makeSingle } from "../../src/single/single.ts";
import { projectDir } from "../support/project.ts";
import { arrangeByKeys } from "./site/arranging.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { pageData, sitePages } from "./site/pages.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-one-"));
const file = join(folder, "motor.html");
const module = "spring-motor";
const visitor = withBrowser(`${pathToFileURL(folder).href}/`);
const pageOf = (kind: string) => sitePages().find((page) => page.path === `modules/${module}/${kind}/`)!;

beforeAll(async () => {
  const script = await oneScript(join(projectDir, "src/browser/single.ts"));
  const site = inject("siteDir");
  const made = makeSingle({ site, module, script, layoutsDir: join(projectDir, "layouts") });
  writeFileSync(file, made?.html ?? "");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every request of the page but that for the file itself. */
function requestsOf(page: Page): string[] {
  const requests: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith("data:") && !url.startsWith(pathToFileURL(file).href)) requests.push(url);
  });
  return requests;
}

const shown = (page: Page) => page.locator("[data-part]:visible");
const openPart = async (page: Page, name: string) => {
  await page
    .getByRole("navigation", { name: "Parts of this file" })
    .getByRole("link", { name, exact: true })
    .press("Enter");
  await expect.poll(() => shown(page).count()).toBe(1);
};

test("it is valid HTML, no two of its ids are alike, and each link within it leads somewhere", async () => {
  const html = readFileSync(file, "utf8");
  const { results } = await new HtmlValidate({ extends: ["html-validate:recommended"] }).validateString(html);
  const faults = results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
  );
  expect(faults).toEqual([]);
  const ids = [...html.matchAll(/<[^<>]* id="([^"]*)"/g)].map((match) => match[1]!);
  expect(new Set(ids).size).toBe(ids.length);
  const links = [...html.matchAll(/<a [^>]*href="#([^"]*)"/g)].map((match) => match[1]!);
  expect(links.length).toBeGreaterThan(100);
  expect(links.filter((id) => !ids.includes(id))).toEqual([]);
});

test("every part shows without a fault of accessibility, and nothing is asked for", {
  timeout: 300_000,
}, async () => {
  const { page, troubles } = await visitor.open("motor.html");
  const requests = requestsOf(page);
  const names = [
    "Sheet",
    "At the bench",
    "Order of steps",
    "Practise the order",
    "Perform it on paper",
    "Quiz",
  ];
  for (const name of names) {
    await openPart(page, name);
    expect(await axeViolations(page)).toEqual([]);
  }
  await page.getByText("Its hazards, tools and substances").press("Enter");
  await openPart(page, "Stored spring energy");
  expect(await axeViolations(page)).toEqual([]);
  const broken = page.locator("img");
  expect(
    await broken.evaluateAll((all) => all.filter((each) => !(each as HTMLImageElement).naturalWidth).length),
  ).toBe(0);
  expect(requests).toEqual([]);
  expect(troubles).toEqual([]);
});

test("practice is done by keys alone", async () => {
  const [task] = pageData<PracticeData>(pageOf("practice")).practices;
  const { page, troubles } = await visitor.open("motor.html");
  await openPart(page, "Practise the order");
  const list = page.getByRole("list", { name: /your order/ }).first();
  await arrangeByKeys(
    page,
    list,
    task!.steps.map(({ title }) => title),
  );
  await page.getByRole("button", { name: "Check this order" }).press("Enter");
  await page.getByRole("heading", { name: "This order is right." }).waitFor();
  expect(troubles).toEqual([]);
});

test("the quiz takes a right answer by keys, and tells where to read again within the file", async () => {
  const at = pageData<QuizData>(pageOf("quiz")).items.findIndex(
    ({ question }) => question.kind === "choose-one",
  );
  const { question } = pageData<QuizData>(pageOf("quiz")).items[at]!;
  if (question.kind !== "choose-one") throw new Error("the quiz has no question to choose one");
  const right = question.options.find((option) => option.right)!;
  const { page, troubles } = await visitor.open("motor.html");
  await openPart(page, "Quiz");
  const root = page.locator(`[data-question="${question.id}"]`);
  await root.getByRole("radio", { name: right.text }).press("Space");
  await root.getByRole("button", { name: /Check/ }).press("Enter");
  await root.getByText("Right", { exact: false }).first().waitFor();
  expect(troubles).toEqual([]);
});

test("keys of the bench view turn its cards while it is shown, and do nothing in other parts", async () => {
  const { page } = await visitor.open("motor.html");
  await page.keyboard.press("ArrowRight");
  expect(new URL(page.url()).hash).toBe("");
  await openPart(page, "At the bench");
  await page.locator(".bench.is-turned").waitFor();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => page.locator(".bench .step:visible").count()).toBe(1);
});

test("without script it is one long document in the order in which one reads", async () => {
  const { page } = await visitor.open("motor.html", { javaScriptEnabled: false });
  const parts = page.locator("[data-part]");
  expect(await shown(page).count()).toBe(await parts.count());
  const ids = await page.locator("[data-part]").all();
  const names = await Promise.all(ids.slice(0, 6).map((part) => part.getAttribute("id")));
  expect(names).toEqual([
    "part_module",
    "part_bench",
    "part_order",
    "part_practice",
    "part_dry-run",
    "part_quiz",
  ]);
  await page.setViewportSize({ width: 320, height: 800 });
  expect(await page.locator("html").evaluate((root) => root.scrollWidth)).toBeLessThanOrEqual(320);
});
