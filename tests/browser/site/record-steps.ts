/** What one does on the pages of the small programme that keeps records. */
import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import type { RecordFile } from "../../../src/engine/competency/record.ts";
import type { DryRunData, PracticeData, QuizData } from "../../../src/model/page-data.ts";
import { answerQuestion } from "./answering.ts";
import { arrangeByKeys } from "./arranging.ts";
import { mouse } from "./hands.ts";
import { pageData, type SitePage, sitePages } from "./pages.ts";
import type { RecordSite } from "./record-site.ts";

export interface Doings {
  read(): Promise<void>;
  acknowledge(): Promise<void>;
  sitQuiz(right?: boolean): Promise<void>;
  practise(): Promise<void>;
  perform(): Promise<void>;
  openRecord(): Promise<void>;
}

/** `base` is the address of the site, on which the page is already. */
export function doingsOn(page: Page, site: RecordSite, base: string): Doings {
  const go = (path: string) => page.goto(`${base}${path}index.html`);
  const made = (kind: string): SitePage => sitePages(site.dir).find((each) => each.kind === kind)!;
  return {
    async read() {
      await go("modules/box/");
      await page.getByRole("button", { name: "I have read this sheet" }).click();
      await page.getByText(/^Read on .* in your record/).waitFor();
    },
    async acknowledge() {
      await go("hazards/vapour/");
      await page.getByRole("button", { name: "I have read and understood this" }).click();
      await page.getByText(/^Acknowledged on .* in your record/).waitFor();
    },
    async sitQuiz(right = true) {
      await go("modules/box/quiz/");
      for (const { question } of pageData<QuizData>(made("quiz")).items)
        await answerQuestion(page, question, right, mouse);
      await page.getByRole("button", { name: "Check my answers" }).click();
      await keptIn(page).waitFor();
    },
    async practise() {
      await go("modules/box/practice/");
      const [task] = pageData<PracticeData>(made("practice")).practices;
      await arrangeByKeys(
        page,
        page.locator(".arrange"),
        task!.steps.map(({ title }) => title),
      );
      await page.getByRole("button", { name: "Check this order" }).click();
      await keptIn(page).waitFor();
    },
    async perform() {
      await go("modules/box/dry-run/");
      for (const { title } of pageData<DryRunData>(made("dry-run")).steps)
        await page.getByRole("button", { name: title, exact: true }).click();
      await keptIn(page).waitFor();
    },
    async openRecord() {
      await go("record/");
      await page.getByRole("heading", { name: "Sign-offs" }).waitFor();
    },
  };
}

const keptIn = (page: Page): Locator => page.getByText(/^Kept in your record/);

/** The cell of the log, of the module "box", under this heading. */
export const logCell = (page: Page, name: string): Locator =>
  page.locator(`[data-module="box"] [data-name="${name}"]`);

export const cellText = async (page: Page, name: string): Promise<string> =>
  (await logCell(page, name).innerText()).replace(/\s+/g, " ").trim();

/** Presses what offers a file, and gives the file's name and text. */
export async function savedBy(
  page: Page,
  press: () => Promise<void>,
): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), text: readFileSync((await download.path())!, "utf8") };
}

/** The record as the page saves it. */
export async function savedRecord(page: Page): Promise<{ text: string; file: RecordFile }> {
  const button = page.getByRole("button", { name: "Save my record as a file" });
  const { text, name } = await savedBy(page, () => button.click());
  expect(name).toMatch(/\.record\.json$/);
  return { text, file: JSON.parse(text) as RecordFile };
}

/** Chooses a file to be added to the record, and gives what the page says of it. */
export async function addFile(page: Page, text: string, name = "file.json"): Promise<string> {
  const said = page.locator(".file-said");
  await said.evaluate((element) => element.replaceChildren());
  await page
    .getByLabel("Add a file to it")
    .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  await expect.poll(() => said.innerText()).toContain(name);
  return said.innerText();
}
