import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { runCommand } from "../support/run-command.ts";
import { withBrowser } from "./site/browser.ts";
import { pageOfEachKind } from "./site/pages.ts";

const visitor = withBrowser();
const printed = pageOfEachKind();

test.each(printed)("$kind ($path) prints what it says, without its navigation", async ({ path }) => {
  const { page } = await visitor.open(path);
  const heading = await page.getByRole("heading", { level: 1 }).innerText();
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("heading", { level: 1 }).isVisible()).toBe(true);
  for (const navigation of await waysElsewhere(page).all()) expect(await navigation.isVisible()).toBe(false);
  const { pages, text } = await printOf(page);
  expect(pages).toBeGreaterThan(0);
  // Lines are broken elsewhere on paper, and soft hyphens are drawn.
  if (text !== undefined) expect(joined(text).includes(joined(heading)), heading).toBe(true);
  await page.context().close();
});

test("the operation sheet prints every step with its tray", async () => {
  const { path } = printed.find(({ kind }) => kind === "module")!;
  const { page } = await visitor.open(path);
  const trays = await page.getByText(/^On the tray after step \d+$/).count();
  expect(trays).toBeGreaterThan(5);
  await page.emulateMedia({ media: "print" });
  for (const tray of await page.getByText(/^On the tray after step \d+$/).all())
    expect(await tray.isVisible()).toBe(true);
  const { pages, text } = await printOf(page);
  expect(pages).toBeGreaterThan(1);
  if (text !== undefined) expect(joined(text).match(/onthetrayafterstep/gi)).toHaveLength(trays);
});

/** Some pages more than it is now, and less than a page a step. */
const sheetsOfPaper = [
  { id: "spring-motor", steps: 32, atMost: 26 },
  { id: "hand-crank-sewing-machine", steps: 32, atMost: 29 },
];

test.each(sheetsOfPaper)(
  "$id prints its $steps steps on at most $atMost pages",
  async ({ id, steps, atMost }) => {
    const { page } = await visitor.open(`modules/${id}/index.html`);
    const numbered = page.getByRole("heading", { level: 3, name: /^\d+ / });
    const titles = await numbered.allInnerTexts();
    expect(titles).toHaveLength(steps);
    await page.emulateMedia({ media: "print" });
    for (const heading of await numbered.all()) expect(await heading.isVisible()).toBe(true);
    const { pages, text } = await printOf(page);
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(atMost);
    if (text !== undefined) for (const title of titles) expect(joined(text)).toContain(joined(title));
    await page.context().close();
  },
);

/** Letter is shorter than A4: ANSI/ASME Y14.1, 8.5 in × 11 in. */
test.each(["A4", "Letter"] as const)(
  "the route sheet prints its modules, each with room to sign, on at most two pages of %s",
  async (format) => {
    const { page } = await visitor.open("route/");
    const modules = await page.locator(".route tbody th[scope=row]").allInnerTexts();
    expect(modules.length).toBeGreaterThan(5);
    await page.emulateMedia({ media: "print" });
    const places = await page.locator(".route-sign > i").all();
    expect(places).toHaveLength(modules.length * 3);
    for (const place of places)
      expect(await place.evaluate((line) => line.getBoundingClientRect().width)).toBeGreaterThan(60);
    const { pages, text } = await printOf(page, format);
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThanOrEqual(2);
    if (text !== undefined) for (const title of modules) expect(joined(text)).toContain(joined(title));
    await page.context().close();
  },
);

/** The order of work is a list of contents, of use on paper as well; all other navigation leads elsewhere. */
const waysElsewhere = (page: Page) => page.locator("nav").and(page.locator(":not(.order-of-work)"));

const joined = (text: string): string => text.replaceAll(/[\s\u00ad\u2010-]+/g, "").toLowerCase();

/** How many pages it makes, and its text where `pdftotext` is installed. */
async function printOf(page: Page, format = "A4"): Promise<{ pages: number; text: string | undefined }> {
  const folder = await mkdtemp(join(tmpdir(), "print-"));
  try {
    const pdf = await page.pdf({ path: join(folder, "page.pdf"), format });
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    const read = await runCommand("pdftotext", ["-raw", join(folder, "page.pdf"), "-"]).catch(
      () => undefined,
    );
    return { pages, text: read?.code === 0 ? read.stdout : undefined };
  } finally {
    await rm(folder, { recursive: true });
  }
}
