/** A programme's own substance in the sums of vapour: offered first, with its figures and where they come from. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { changed, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { serveFolder } from "../support/static-server.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { tabTo } from "./site/keyboard.ts";

const air =
  "air: {molar-mass: 142, gravity: 0.77, lower-limit: 0.7 %, exposure-limit: 300 mg/m³ (the supplier), flash-point: 41 °C, source: data sheet of 3 May}";
const content = changed(
  "substances/spirit.md",
  "data-sheet:",
  `${air}\ndata-sheet:`,
  changed("substances/spirit.md", "title: Spirit", "title: Shed spirit"),
);

const folder = mkdtempSync(join(tmpdir(), "benchwright-own-"));
const built = await runTool(["build", "--content", writeFolder(content), "--to", join(folder, "site")]);
if (built.code !== 0) throw new Error(`the programme can't be built:\n${built.stdout}${built.stderr}`);
const server = await serveFolder(join(folder, "site"), "/shed/");
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

const visitor = withBrowser(server.url);
const section = (page: Page): Locator => page.getByRole("region", { name: "Vapour in a room" });
const said = (page: Page): Locator => section(page).locator("[aria-live=polite]");
const written = (page: Page, label: string): Promise<string> => section(page).getByLabel(label).inputValue();

test("is chosen by keys, brings its figures, and is reckoned with them", async () => {
  const { page, troubles } = await visitor.open("sums/");
  await tabTo(page, section(page).getByLabel("Substance"));
  await page.keyboard.press("ArrowDown");
  expect(await written(page, "Substance")).toBe("Shed spirit");
  expect(await written(page, "Molar mass")).toBe("142");
  expect(await written(page, "Flash point")).toBe("41 °C");
  expect(await written(page, "Where the figures come from")).toBe("data sheet of 3 May; limit: the supplier");
  await tabTo(page, section(page).getByLabel("Liquid that evaporates"));
  await page.keyboard.type("100 mL");
  await tabTo(page, section(page).getByLabel("Room", { exact: true }));
  await page.keyboard.type("30 m³");
  await page.keyboard.press("Enter");
  // 77 g / 142 g/mol · 24.06 L/mol = 13.05 L, in 30 m³ 434.9 ppm; 77 g in 30 m³ are 2570 mg/m³, 8.56 times 300.
  await expect.poll(() => said(page).innerText()).toContain("435 ppm");
  expect(await said(page).innerText()).toMatch(/^Shed spirit: an estimate .* 8\.56 times the exposure limit/);
  expect(await section(page).innerText()).toContain("data sheet of 3 May; limit: the supplier");
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("its figures go with it, except what was mended", async () => {
  const { page } = await visitor.open("sums/");
  const choose = (value: string) => section(page).getByLabel("Substance").selectOption(value);
  await choose("Shed spirit");
  await section(page).getByLabel("Flash point").fill("38 °C");
  await choose("acetone");
  expect(await written(page, "Molar mass")).toBe("");
  expect(await written(page, "Where the figures come from")).toBe("");
  expect(await written(page, "Flash point")).toBe("38 °C");
  await choose("Shed spirit");
  expect(await written(page, "Flash point")).toBe("41 °C");
  await section(page).getByRole("button", { name: "Clear" }).click();
  await choose("acetone");
  expect(await written(page, "Weight against water")).toBe("");
});

test("a link brings it back, mended figures too", async () => {
  const { page } = await visitor.open("sums/");
  await section(page).getByLabel("Substance").selectOption("Shed spirit");
  await section(page).getByLabel("Liquid that evaporates").fill("100 mL");
  await section(page).getByLabel("Room", { exact: true }).fill("30 m³");
  await section(page).getByLabel("Flash point").fill("38 °C");
  await section(page).getByRole("button", { name: "Work it out" }).click();
  await said(page).getByRole("heading").waitFor();
  const answer = await said(page).innerText();
  const other = (await visitor.open(page.url())).page;
  await expect.poll(() => said(other).innerText()).toBe(answer);
  expect(await written(other, "Flash point")).toBe("38 °C");
  expect(await written(other, "Molar mass")).toBe("142");
});

test("its sheet leads to its sum, which waits for the rest and finds no fault yet", async () => {
  const { page } = await visitor.open("substances/spirit/");
  await page.getByText("Flash point 41 °C, lower flammable limit 0.7 %").waitFor();
  await page.getByRole("link", { name: "Reckon its vapour in a room" }).click();
  await expect.poll(() => written(page, "Substance")).toBe("Shed spirit");
  expect(await written(page, "Molar mass")).toBe("142");
  expect(await page.locator("[aria-invalid]").count()).toBe(0);
  expect(await said(page).innerText()).toBe("");
});

test("without script nothing is offered, and the formulas stand there", async () => {
  const { page } = await visitor.open("sums/", { javaScriptEnabled: false });
  expect(await section(page).getByLabel("Substance").isVisible()).toBe(false);
  expect(await section(page).getByText("How it is reckoned").isVisible()).toBe(true);
});
