/** Papers drawn from a pool, the wait before the next sitting, and supervised sittings: on a small programme of its own. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readSittingFile } from "../../src/engine/quiz/sitting-file.ts";
import { changed, type Files } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { withBrowser } from "./site/browser.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-"));
const visitor = withBrowser(`${pathToFileURL(folder).href}/`);
const quizFile = "modules/box/quiz.yaml";
const first = "questions:\n  - id: first";

async function build(name: string, files: Files): Promise<void> {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, `${name}-content`, path)), { recursive: true });
    writeFileSync(join(folder, `${name}-content`, path), text);
  }
  const args = ["build", "--content", join(folder, `${name}-content`), "--to", join(folder, name)];
  const { code, stderr } = await runTool(args);
  expect(stderr + String(code)).toMatch(/0$/);
}

beforeAll(async () => {
  const waiting = changed("programme.yaml", "name: Test bench", "name: Test bench\nsit-again: 12 h");
  await build("paper", changed(quizFile, first, `paper: 4\n${first}`, waiting));
  await build("supervised", changed(quizFile, first, `supervised: true\n${first}`));
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const asked = (page: Page) =>
  page.locator("[data-question]:visible").evaluateAll((all) => all.map(({ dataset }) => dataset.question));
const closeAll = async (page: Page, words: string): Promise<void> => {
  await page.getByRole("button", { name: words }).click();
  await page.getByRole("button", { name: words }).click();
};

test("a sitting asks some of the pool, numbered from 1, and the same after a reload", async () => {
  const { page, troubles } = await visitor.open("paper/modules/box/quiz/index.html");
  const paper = await asked(page);
  expect(paper).toHaveLength(4);
  const numbers = await page.locator(".question-number:visible").allInnerTexts();
  expect(numbers).toEqual(["1", "2", "3", "4"]);
  await page.reload();
  expect(await asked(page)).toEqual(paper);
  expect(troubles).toEqual([]);
});

test("after a sitting that was not passed the page says from when one may sit again, and then prefers what was missed or not asked", async () => {
  const { page } = await visitor.open("paper/modules/box/quiz/index.html");
  await page.clock.install();
  await page.reload();
  await closeAll(page, "Check my answers");
  // British: the day before the month, the clock to 24.
  expect(await page.getByText(/You may sit again from \w+,? \d+ \w+ at \d\d:\d\d\./).count()).toBe(2);
  expect(await page.getByRole("button", { name: "Sit again" }).count()).toBe(0);
  expect(await page.getByRole("heading", { name: "Faults to go over" }).count()).toBe(1);
  await page.clock.fastForward("12:00:01");
  await page.reload();
  await page.getByRole("button", { name: "Sit again" }).first().click();
  expect(await asked(page)).toHaveLength(4);
  expect(await page.getByRole("heading", { level: 2 }).count()).toBe(0);
});

test("a supervised sitting says nothing of its answers and gives them out as a file, in words", async () => {
  const { page, troubles } = await visitor.open("supervised/modules/box/quiz/index.html");
  expect(await page.getByRole("button", { name: "Check this answer" }).count()).toBe(0);
  expect(await page.getByRole("link", { name: "key sheet" }).count()).toBe(0);
  await page.getByLabel(/Number of the paper/).fill("K 17");
  await page.keyboard.press("Tab");
  await page.getByRole("radio", { name: "The lid", exact: true }).check();
  await page.locator('[data-question="pairs"] select').first().selectOption({ label: "four screws" });
  await page.locator('[data-question="word"]').getByRole("textbox").fill("screws");
  await page.reload();
  await closeAll(page, "Close my answers");
  const said = await page.locator("main").innerText();
  expect(said).not.toMatch(/Right|Not right|Passed|Read again/);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the file" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("box-1.sitting.json");
  const read = readSittingFile(readFileSync((await download.path())!, "utf8"));
  expect(read).toMatchObject({ ok: true, value: { module: "box", revision: 1, seed: "K 17" } });
  expect(read.ok && [...read.value.answers]).toEqual([
    ["first", "The lid"],
    ["pairs", ["four screws", null, null]],
    ["word", "screws"],
  ]);
  expect(troubles).toEqual([]);
});
