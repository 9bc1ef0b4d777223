/** Figures on the demo's pages: read without a script, enlarged by keyboard, their numbers tied to steps and trays. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Locator, Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { photograph } from "../pictures/photograph.ts";
import { changed, withFile, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { serveFolder } from "../support/static-server.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { tabTo } from "./site/keyboard.ts";
import { sitePages } from "./site/pages.ts";

const visitor = withBrowser();
/** The sheet with most numbers in its figures. */
const numbersOn = (html: string): number => html.split("data-item=").length;
const sheet = sitePages()
  .filter(({ kind }) => kind === "module")
  .toSorted((a, b) => numbersOn(b.html) - numbersOn(a.html))[0]!;

const figureOf = (page: Page): Locator => page.locator(".numbered").first();
const rowOf = (page: Page, number: number): Locator =>
  figureOf(page)
    .locator(".items li")
    .nth(number - 1);
const numberIn = (page: Page, number: number): Locator =>
  figureOf(page).locator(`.item-numbers a[data-item="${number}"]`);

/** Titles of the steps to which a line of the list leads. */
async function stepsOf(page: Page, row: Locator): Promise<string[]> {
  const hrefs = await row
    .locator(".step-links a")
    .evaluateAll((links) => links.map((link) => link.getAttribute("href")!.slice(1)));
  return page.evaluate(
    (ids) => ids.map((id) => document.getElementById(id)!.querySelector("h3")!.textContent!),
    [...new Set(hrefs)],
  );
}

const marked = (page: Page): Locator => page.locator(".step h3:has(.item-mark)");

test("without a script the list says what each number is, where it comes off and where it is kept, and leads there", async () => {
  const { page } = await visitor.open(sheet.path, { javaScriptEnabled: false });
  const count = await figureOf(page).locator(".item-numbers a").count();
  expect(count).toBeGreaterThan(10);
  expect(await figureOf(page).locator(".items li").count()).toBe(count);
  const row = figureOf(page).locator(".items li").filter({ hasText: "Taken off:" }).first();
  await expect.poll(() => row.innerText()).toMatch(/Taken off: steps? \d+.*Kept: \S/s);
  const step = await row.locator(".step-links a").first().getAttribute("href");
  await row.locator(".step-links a").first().click();
  await page.waitForURL((url) => url.hash === step);
  const large = figureOf(page).getByRole("link", { name: "Picture without numbers" });
  await large.click();
  await page.waitForURL(/\.svg$/);
});

test("a number that has the focus shows its line, the steps that move it, and it on their trays; colours say nothing of it", async () => {
  const { page, troubles } = await visitor.open(sheet.path, { forcedColors: "active" });
  const row = figureOf(page).locator(".items li").filter({ hasText: "Taken off:" }).first();
  const number = Number(await row.locator(".item-number").innerText());
  const steps = await stepsOf(page, row);
  await tabTo(page, numberIn(page, number));
  await expect.poll(() => marked(page).count()).toBe(steps.length);
  expect(await marked(page).locator(".item-mark").allTextContents()).toEqual(
    Array(steps.length).fill(String(number)),
  );
  expect(await row.evaluate((line) => getComputedStyle(line).outlineStyle)).toBe("solid");
  const of = await row.getAttribute("data-of");
  const entries = page.locator(`.tray [data-of="${of}"]`);
  expect(await entries.count()).toBeGreaterThan(0);
  expect(await entries.locator(".item-mark").allTextContents()).toEqual(
    Array(await entries.count()).fill(String(number)),
  );
  await page.keyboard.press("Enter");
  await page.waitForURL(/#i_/);
  await expect.poll(() => marked(page).count()).toBe(steps.length);
  await page.keyboard.press("Escape");
  await expect.poll(() => page.locator(".item-mark").count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("pointing at a number and away from it shows and hides; from its line one comes back to the figure", async () => {
  const { page } = await visitor.open(sheet.path);
  await numberIn(page, 1).hover();
  await expect.poll(() => rowOf(page, 1).getAttribute("class")).toBe("is-shown");
  await page.mouse.move(1, 1);
  await expect.poll(() => page.locator(".is-shown").count()).toBe(0);
  await rowOf(page, 2).locator(".item-number").click();
  await page.waitForURL(/#n_/);
  // The page has moved under the pointer, which may lie on another number now.
  await page.mouse.move(1, 1);
  await expect.poll(() => numberIn(page, 2).getAttribute("class")).toBe("is-shown");
  expect(await numberIn(page, 2).evaluate((link) => link === document.activeElement)).toBe(true);
});

test("what is pointed at says its name and steps under the figure, and numbers are gone through as they stand", async () => {
  const { page } = await visitor.open(sheet.path);
  const said = figureOf(page).locator(".item-said");
  await expect.poll(() => said.innerText()).toContain("Point at a number");
  const height = () => said.evaluate((line) => line.getBoundingClientRect().height);
  const before = await height();
  const name = (await rowOf(page, 1).locator("b").first().textContent())!.trim();
  await numberIn(page, 1).hover();
  await expect.poll(() => said.innerText()).toMatch(new RegExp(`^1 ${name}(?::|$)`));
  expect(await height()).toBe(before);
  await page.mouse.move(1, 1);
  await expect.poll(() => said.innerText()).toContain("Point at a number");
  const places = await figureOf(page)
    .locator(".item-hit")
    .evaluateAll((rings) => rings.map((ring) => ring.getBoundingClientRect().toJSON() as DOMRect));
  const downwards = (a: DOMRect, b: DOMRect) => a.x - b.x || a.y - b.y;
  expect(places).toEqual(places.toSorted(downwards));
  const skip = figureOf(page).getByRole("link", { name: "Past the list" });
  await skip.focus();
  await page.keyboard.press("Enter");
  await page.waitForURL(/#e_/);
  await page.keyboard.press("Tab");
  expect(
    await figureOf(page).evaluate((own) => {
      const behind = own.compareDocumentPosition(document.activeElement!);
      return (behind & Node.DOCUMENT_POSITION_FOLLOWING) !== 0 && !own.contains(document.activeElement);
    }),
  ).toBe(true);
});

test("on a narrow telephone every number can be hit, and none covers another", async () => {
  const { page } = await visitor.open(sheet.path, { viewport: { width: 360, height: 740 } });
  const boxes = await figureOf(page)
    .locator(".item-hit")
    .evaluateAll((rings) => rings.map((ring) => ring.getBoundingClientRect().toJSON() as DOMRect));
  for (const [at, { x, y, width }] of boxes.entries()) {
    expect(width).toBeGreaterThanOrEqual(24);
    for (const other of boxes.slice(at + 1))
      expect(Math.hypot(other.x - x, other.y - y)).toBeGreaterThanOrEqual(23.9);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
});

test("a figure is enlarged by keyboard, moved and closed, and the focus comes back; its script comes only then", async () => {
  const { page, troubles } = await visitor.open(sheet.path);
  const scripts: string[] = [];
  page.on("request", (request) => scripts.push(request.url()));
  const enlarge = figureOf(page).getByRole("button", { name: "Enlarge" });
  await tabTo(page, enlarge);
  expect(scripts.filter((url) => url.includes("zoom-"))).toEqual([]);
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Figure enlarged" });
  await dialog.waitFor();
  expect(scripts.filter((url) => url.includes("zoom-"))).toHaveLength(1);
  const view = dialog.getByRole("group", { name: "Figure", exact: true });
  const sheetWidth = () =>
    dialog.locator(".zoom-sheet").evaluate((shown) => shown.getBoundingClientRect().width);
  const whole = await sheetWidth();
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press("Tab");
  await expect.poll(() => dialog.locator(".zoom-said").innerText()).toMatch(/^\d+ \S+/);
  for (const key of ["+", "+", "+"]) await page.keyboard.press(key);
  await expect.poll(() => dialog.getByRole("status").innerText()).toBe("300%");
  await expect.poll(sheetWidth).toBeCloseTo(whole * 3, 0);
  const left = () => view.evaluate((shown) => shown.scrollLeft);
  const before = await left();
  await page.keyboard.press("ArrowRight");
  await expect.poll(left).toBeGreaterThan(before);
  await page.keyboard.press("-");
  await expect.poll(() => dialog.getByRole("status").innerText()).toBe("200%");
  await page.keyboard.press("0");
  await expect.poll(sheetWidth).toBeCloseTo(whole, 0);
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
  await expect.poll(() => enlarge.evaluate((own) => own === document.activeElement)).toBe(true);
  expect(troubles).toEqual([]);
});

const figure =
  "figure: {file: figures/lid.jpg, alt: The lid, items: {1: {of: lid, at: [20, 30]}, 2: {name: box, at: [80, 90]}}}";
const folder = mkdtempSync(join(tmpdir(), "benchwright-photo-"));
const content = withFile(
  "modules/box/figures/lid.jpg",
  await photograph("jpeg", { width: 2000, height: 1500, orientation: 6 }),
  changed(
    "modules/box/module.md",
    "id: clean\n",
    `id: clean\n${figure}\n`,
    changed(
      "modules/box/module.md",
      "![A box](figures/box.svg)",
      "![A box](figures/box.svg) ![A photograph](figures/lid.jpg)",
    ),
  ),
);
const built = await runTool(["build", "--content", writeFolder(content), "--to", join(folder, "site")]);
if (built.code !== 0) throw new Error(`the programme can't be built:\n${built.stdout}${built.stderr}`);
const server = await serveFolder(join(folder, "site"), "/shed/");
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});
const shed = withBrowser(server.url);

test.each([
  { name: "a narrow telephone", options: { viewport: { width: 360, height: 740 } }, file: /\.480\.webp$/ },
  {
    name: "a telephone with fine pixels",
    options: { viewport: { width: 400, height: 740 }, deviceScaleFactor: 2 },
    file: /\.960\.webp$/,
  },
  {
    name: "a screen with fine pixels",
    options: { viewport: { width: 1280, height: 900 }, deviceScaleFactor: 2 },
    file: /\.1500\.webp$/,
  },
])(
  "of a photograph $name loads the width that it shows, upright, and only when it comes near",
  async ({ options, file }) => {
    const { page, troubles } = await shed.open("modules/box/", options);
    const photo = page.getByRole("img", { name: "The lid" });
    expect(await photo.getAttribute("loading")).toBe("lazy");
    await photo.scrollIntoViewIfNeeded();
    await expect.poll(() => photo.evaluate((own) => (own as HTMLImageElement).currentSrc)).toMatch(file);
    await expect.poll(() => photo.evaluate((own) => (own as HTMLImageElement).complete)).toBe(true);
    const { width, height } = (await photo.boundingBox())!;
    expect(height / width).toBeCloseTo(2000 / 1500, 1);
    expect(troubles).toEqual([]);
  },
);

test("enlarged, a photograph is its widest file, with its numbers", async () => {
  const { page } = await shed.open("modules/box/");
  await page.getByRole("button", { name: "Enlarge" }).last().click();
  const dialog = page.getByRole("dialog", { name: "Figure enlarged" });
  const photo = dialog.getByRole("img", { name: "The lid" });
  await expect.poll(() => photo.evaluate((own) => (own as HTMLImageElement).currentSrc)).toMatch(/lid\.jpg$/);
  expect(await dialog.locator(".item-numbers text").allTextContents()).toEqual(["1", "2"]);
});

test("of two pictures in a paragraph each is enlarged by the button behind it", async () => {
  const { page } = await shed.open("modules/box/");
  const paragraph = page.locator("p", { has: page.getByRole("img", { name: "A photograph" }) });
  const dialog = page.getByRole("dialog", { name: "Figure enlarged" });
  for (const [at, name] of ["A box", "A photograph"].entries()) {
    await paragraph.getByRole("button", { name: "Enlarge" }).nth(at).click();
    await expect.poll(() => dialog.getByRole("img").getAttribute("alt")).toBe(name);
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
  }
});

test("a page with a numbered photograph breaks no rule that a machine can check", async () => {
  const { page } = await shed.open("modules/box/", { viewport: { width: 360, height: 740 } });
  await page.getByRole("img", { name: "The lid" }).scrollIntoViewIfNeeded();
  expect(await axeViolations(page)).toEqual([]);
});

const keeper = withBrowser(server.url, { keepsSites: true });

test("without a network the size that is kept stands for the one that is not", async () => {
  const { page } = await keeper.open("about/", {
    viewport: { width: 1280, height: 900 },
    deviceScaleFactor: 2,
  });
  await page.getByText("The whole site is kept on this device").waitFor({ timeout: 120_000 });
  await page.context().setOffline(true);
  await page.goto(`${server.url}modules/box/`);
  const photo = page.getByRole("img", { name: "The lid" });
  await photo.scrollIntoViewIfNeeded();
  const loaded = () =>
    photo.evaluate((own) => {
      const { currentSrc, naturalWidth } = own as HTMLImageElement;
      return `${currentSrc.split("/").at(-1)} ${naturalWidth > 0}`;
    });
  await expect.poll(loaded).toBe("lid.jpg.1500.webp true");
});

test("in a module's one file numbers show their items, and there is nothing that leads out of it", async () => {
  const file = join(folder, "box.html");
  const made = await runTool(["build", "--content", writeFolder(content), "--single", "box", "--to", file]);
  expect(made.code, made.stderr).toBe(0);
  const { page } = await shed.open("");
  await page.goto(pathToFileURL(file).href);
  await page.locator(".numbered .item-numbers a").first().focus();
  await expect.poll(() => page.locator(".items li.is-shown").count()).toBe(1);
  const visible = page.locator("[data-part]:not([hidden])");
  await expect.poll(() => visible.locator(".tray .item-mark").allTextContents()).toContain("1");
  const inEach = await visible
    .locator(".tray [data-of]")
    .evaluateAll((all) => all.map((entry) => entry.querySelectorAll(".item-mark").length));
  expect(new Set(inEach)).toEqual(new Set([1]));
  expect(await page.locator("a.enlarge").count()).toBe(0);
});

/** Every script and picture that the page asks for from now on. */
function requestsOf(page: Page): string[] {
  const urls: string[] = [];
  page.on("request", (request) => urls.push(request.url()));
  return urls;
}

const scriptsIn = (html: string): string[] =>
  [...html.matchAll(/<script src="[^"]*\/([a-z]+)-[^"/]*\.js"/g)].map((match) => match[1]!);

test("a page loads what shows pictures large only where it has one to show, and what numbers ask for only with numbers", () => {
  const quizzes = sitePages().filter(({ kind }) => kind === "quiz");
  const withPicture = quizzes.filter(({ html }) => html.includes('class="pointing"'));
  expect(withPicture.length).toBeGreaterThan(0);
  expect(withPicture.length).toBeLessThan(quizzes.length);
  for (const page of quizzes) {
    const forPictures = scriptsIn(page.html).filter((name) => ["figures", "enlarge", "zoom"].includes(name));
    expect(forPictures, page.path).toEqual(withPicture.includes(page) ? ["enlarge"] : []);
  }
  expect(scriptsIn(sheet.html)).toContain("figures");
  expect(scriptsIn(sheet.html)).not.toContain("enlarge");
});

test("the figure of a question is enlarged by keyboard, nothing is answered by it, and the focus comes back", async () => {
  const quiz = sitePages().find(({ kind, html }) => kind === "quiz" && html.includes('class="pointing"'))!;
  const { page, troubles } = await visitor.open(quiz.path);
  const question = page.locator(".question:has(.pointing)").first();
  const enlarge = question.getByRole("button", { name: "Enlarge" });
  await expect.poll(() => enlarge.count()).toBe(1);
  await enlarge.focus();
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Figure enlarged" });
  await dialog.waitFor();
  const name = await question.locator(".pointing img").getAttribute("alt");
  expect(await dialog.locator("img").getAttribute("alt")).toBe(name);
  await page.keyboard.press("+");
  await expect.poll(() => dialog.getByRole("status").innerText()).toBe("150%");
  expect(await axeViolations(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
  await expect.poll(() => enlarge.evaluate((own) => own === document.activeElement)).toBe(true);
  expect(await question.getByRole("radio", { checked: true }).count()).toBe(0);
  expect(troubles).toEqual([]);
});

test("in a module's one file the figure of a sheet and of a question are enlarged, and nothing is asked for", {
  timeout: 180_000,
}, async () => {
  const file = join(folder, "box-enlarged.html");
  const asks = `
  - id: lid-place
    kind: point
    ask: Where is the lid?
    figure: {file: figures/lid.jpg, alt: The lid in a quiz}
    places:
      - {where: Above, circle: [20, 30, 10], right: true}
      - {where: Below, circle: [80, 90, 5], why: The box is there.}
    why: It closes the box.
    see: "#lid-off"
`;
  const path = "modules/box/quiz.yaml";
  const asked = withFile(path, `${String(content.get(path)).trimEnd()}${asks}`, content);
  const made = await runTool(["build", "--content", writeFolder(asked), "--single", "box", "--to", file]);
  expect(made.code, made.stderr).toBe(0);
  const { page, troubles } = await shed.open("");
  await page.goto(pathToFileURL(file).href);
  const asksFor = requestsOf(page);
  const dialog = page.getByRole("dialog", { name: "Figure enlarged" });
  const shows = async (part: string, alt: string): Promise<void> => {
    await page.goto(`${pathToFileURL(file).href}#${part}`);
    const enlarge = page.locator(`#${part}`).getByRole("button", { name: "Enlarge" }).last();
    await enlarge.focus();
    await page.keyboard.press("Enter");
    await dialog.waitFor();
    const photo = dialog.getByRole("img", { name: alt, exact: true });
    await expect.poll(() => photo.evaluate((own) => (own as HTMLImageElement).naturalWidth)).toBe(960);
    await page.keyboard.press("+");
    await expect.poll(() => dialog.getByRole("status").innerText()).toBe("150%");
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    await expect.poll(() => enlarge.evaluate((own) => own === document.activeElement)).toBe(true);
  };
  await shows("part_module", "The lid");
  await shows("part_quiz", "The lid in a quiz");
  const own = pathToFileURL(file).href;
  expect(asksFor.filter((url) => !url.startsWith("data:") && !url.startsWith(own))).toEqual([]);
  expect(troubles.filter((trouble) => trouble !== `elsewhere: ${own}`)).toEqual([]);
  const without = await shed.open("", { javaScriptEnabled: false });
  await without.page.goto(pathToFileURL(file).href);
  expect(await without.page.locator(".enlarge:visible").count()).toBe(0);
});
