/** Faults to go over: what quiz, practice and dry run keep becomes one list, on a small programme of its own. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { changed } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { serveFolder } from "../support/static-server.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { tabTo } from "./site/keyboard.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-"));
let server: { url: string; close(): Promise<void> };
const visitor = withBrowser();
const faultsPath = "faults/";

beforeAll(async () => {
  // The first question is critical, so that it must be right twice running.
  const files = changed(
    "modules/box/quiz.yaml",
    "ask: What comes off first?",
    "critical: true\n    ask: What comes off first?",
  );
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, "content", path)), { recursive: true });
    writeFileSync(join(folder, "content", path), text);
  }
  const args = ["build", "--content", join(folder, "content"), "--to", join(folder, "site")];
  const { code, stderr } = await runTool(args);
  expect(code, stderr).toBe(0);
  server = await serveFolder(join(folder, "site"), "/some/where/");
}, 120_000);
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What goes wrong below the site's address is told by the console and failed requests, not by where it is asked for. */
const real = (troubles: readonly string[]): string[] =>
  troubles.filter((one) => !one.startsWith("elsewhere:"));
const open = (path: string, options = {}) => visitor.open(new URL(path, server.url).href, options);
const go = (page: Page, path: string) => page.goto(new URL(path, server.url).href);
const listed = (page: Page) => page.locator(".faults > li");
const module = (page: Page) => page.getByRole("region", { name: "Open the box" });

async function answerFirst(page: Page, option: string): Promise<void> {
  await go(page, "modules/box/quiz/");
  const again = page.getByRole("button", { name: "Sit again" }).first();
  await page.locator('[data-question="first"]').getByRole("radio", { name: option, exact: true }).waitFor();
  if (await again.isVisible()) await again.click();
  await page.locator('[data-question="first"]').getByRole("radio", { name: option, exact: true }).check();
  await page.getByRole("button", { name: "Check my answers" }).click();
  await page.getByRole("button", { name: "Check my answers" }).click();
  await page.getByRole("heading", { level: 2, name: /passed/i }).waitFor();
}

test("without a fault the page says so in words", async () => {
  const { page, troubles } = await open(faultsPath);
  expect(await page.locator(".faults-list").innerText()).toMatch(
    /^Nothing to go over\. .* comes onto this list\.$/,
  );
  expect(await page.getByRole("button", { name: "Print the list" }).count()).toBe(0);
  expect(await axeViolations(page)).toEqual([]);
  expect(real(troubles)).toEqual([]);
});

test("what is missed in a quiz is listed with what to read, critical first, and leaves the list by the rule", async () => {
  const { page, troubles } = await open("modules/box/quiz/");
  await answerFirst(page, "The wheel");
  await go(page, faultsPath);
  const first = listed(page).first();
  expect(await first.innerText()).toMatch(/^Critical\. What comes off first\?[\s\S]*Quiz: missed once\./);
  await expect.poll(() => listed(page).count()).toBe(9);
  await answerFirst(page, "The lid");
  await go(page, faultsPath);
  expect(await first.innerText()).toContain("Right since, and once more to go.");
  await answerFirst(page, "The lid");
  await go(page, faultsPath);
  expect(await module(page).innerText()).not.toContain("What comes off first?");
  expect(await listed(page).count()).toBe(8);
  // The questions left out each time count as missed each time.
  expect(await first.innerText()).toContain("missed 3 times");
  const read = listed(page).filter({ hasText: "How much spirit?" }).getByRole("link");
  await read.click();
  await expect.poll(() => page.url()).toContain("modules/box/index.html#clean");
  expect(real(troubles)).toEqual([]);
});

test("steps that went wrong in practice and in the dry run stand on it once each, with why", async () => {
  const { page, troubles } = await open("modules/box/practice/");
  // No practice begins right.
  await page.getByRole("button", { name: "Check this order" }).click();
  await page.getByRole("heading", { level: 3, name: /not right/i }).waitFor();
  await go(page, "modules/box/dry-run/");
  await page.getByRole("button", { name: "Put the lid on", exact: true }).click();
  await page.getByText("Not yet.").waitFor();
  await go(page, faultsPath);
  const lid = listed(page).filter({ hasText: "Put the lid on" }).filter({ hasText: "Dry run: missed once." });
  expect(await lid.count()).toBe(1);
  expect(await lid.innerText()).toContain("comes first: ");
  expect(
    await listed(page).filter({ hasText: "The whole box (practice): missed once." }).count(),
  ).toBeGreaterThan(0);
  const names = await listed(page).locator(".fault a").allInnerTexts();
  expect(new Set(names).size).toBe(names.length);
  const again = module(page).locator("ul.faults-again a");
  expect(await again.allInnerTexts()).toEqual(["The whole box (practice)", "Dry run"]);
  expect(await again.first().getAttribute("href")).toBe("../modules/box/practice/index.html#practice-whole");
  expect(real(troubles)).toEqual([]);
});

test("a run without a fault puts its steps right; a practice has to be done again from the beginning", async () => {
  const { page } = await open("modules/box/dry-run/");
  const choose = (name: string) => page.getByRole("button", { name, exact: true }).click();
  const steps = [
    "Take the lid off",
    "Release the brake",
    "Take the wheel out",
    "Clean the wheel",
    "Put the wheel back",
    "Set the brake",
    "Put the lid on",
  ];
  await choose("Put the lid on");
  await page.getByText("Not yet.").waitFor();
  for (const step of steps) await choose(step);
  await page.getByText("All 7 steps are done.").waitFor();
  await go(page, faultsPath);
  // It was done at last, but in the same run.
  expect(await listed(page).count()).toBe(1);
  await go(page, "modules/box/dry-run/");
  await page.getByRole("button", { name: "Start again" }).click();
  await page.getByRole("button", { name: "Yes, clear them" }).click();
  for (const step of steps) await choose(step);
  await page.getByRole("heading", { level: 2, name: "Done without a refusal" }).waitFor();
  await go(page, faultsPath);
  await expect.poll(() => page.locator(".faults-list").innerText()).toContain("Nothing to go over.");
});

test("by keyboard: the list's links are reached by Tab and lead to the step", async () => {
  const { page } = await open("modules/box/dry-run/");
  await page.getByRole("button", { name: "Put the lid on", exact: true }).click();
  await page.getByText("Not yet.").waitFor();
  await tabTo(page, page.getByRole("link", { name: "faults to go over" }));
  await page.keyboard.press("Enter");
  await expect.poll(() => page.url()).toContain("/faults/");
  const link = page.getByRole("link", { name: "Put the lid on" });
  await link.waitFor();
  await tabTo(page, link);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.url()).toContain("modules/box/index.html#lid-on");
  await page.goBack();
  await tabTo(page, page.getByRole("button", { name: "Print the list" }));
});

test.each(
  [360, 1280].flatMap((width) =>
    (["light", "dark"] as const).map((colorScheme) => [width, colorScheme] as const),
  ),
)("the list keeps the rules of axe at %i px, %s, and on paper has no button", async (width, colorScheme) => {
  const { page } = await open("modules/box/quiz/", { viewport: { width, height: 800 }, colorScheme });
  await answerFirst(page, "The wheel");
  await go(page, faultsPath);
  await expect.poll(() => listed(page).count()).toBe(9);
  expect(await axeViolations(page)).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("button", { name: "Print the list" }).isVisible()).toBe(false);
  expect(await listed(page).first().isVisible()).toBe(true);
});

test("what another hand has put into the store breaks nothing, and leads nowhere else", async () => {
  const { page, troubles } = await open(faultsPath);
  const kept = (places: unknown) =>
    page.evaluate((value) => localStorage.setItem("benchwright:faults:box@1", value), JSON.stringify(places));
  for (const rubbish of [7, null, ["quiz"], [["quiz", 3]], [["quiz", { goes: [["1", { asked: 5 }]] }]]]) {
    await kept(rubbish);
    await page.reload();
    await expect.poll(() => page.locator(".faults-list").innerText()).toContain("Nothing to go over.");
  }
  const goes = [["1", { asked: ["a"], missed: ["a"], critical: [] }]];
  for (const href of [
    "javascript:alert(1)",
    "https://example.org/",
    "//example.org/",
    "../../../../../outside",
  ]) {
    await kept([
      [
        "quiz",
        {
          title: "Quiz",
          goes,
          words: [["a", { text: "<b>a</b>", see: { href, text: "there" }, notes: [] }]],
        },
      ],
    ]);
    await page.reload();
    const link = page.getByRole("link", { name: "there" });
    await link.waitFor();
    expect(await link.getAttribute("href"), href).toBe("../modules/box/index.html");
    expect(await listed(page).innerText()).toContain("<b>a</b>");
  }
  expect(real(troubles)).toEqual([]);
});
