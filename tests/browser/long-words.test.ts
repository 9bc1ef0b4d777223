/** Words as long as German makes them, on the narrowest screen: nothing is pushed off the page and no button loses its words. */
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { type BuiltSite, builtSite, germanContent } from "./site/in-language.ts";

const module = "modules/kaffeemuehle";
const long = "Handkurbelwellenlagerschalenbefestigungsschraubensicherung";

let site: BuiltSite;
const visitor = withBrowser(() => site.url);
beforeAll(async () => {
  site = await builtSite((folder) => {
    const content = join(folder, "content");
    cpSync(germanContent, content, { recursive: true });
    const file = join(content, module, "module.md");
    const text = readFileSync(file, "utf8");
    writeFileSync(
      file,
      text.replace(/^title: .*$/m, `title: ${long} nachziehen`).replace(/^## .*$/gm, `$& ${long}`),
    );
    return content;
  });
}, 180_000);
afterAll(() => site?.end());

/** Buttons whose words are wider than they are. */
function spilled(): string[] {
  return [...document.querySelectorAll<HTMLElement>("button, .bench-tick")]
    .filter((button) => button.clientWidth > 0 && button.scrollWidth > button.clientWidth + 1)
    .map((button) => button.textContent ?? "");
}

// WCAG 2.2, 1.4.10 Reflow.
test("every page fits 320 px", { timeout: 180_000 }, async () => {
  const { page, troubles } = await visitor.open("", { viewport: { width: 320, height: 640 } });
  const files = readdirSync(site.folder, { recursive: true, encoding: "utf8" });
  const pages = files.filter((file) => /(?:^|\/)index\.html$/.test(file));
  expect(pages.length).toBeGreaterThan(20);
  const wide: string[] = [];
  for (const file of pages) {
    await page.goto(site.url + file.replace(/index\.html$/, ""));
    await page.evaluate(() => document.fonts.ready);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    const buttons = await page.evaluate(spilled);
    if (width > 320 || buttons.length > 0) wide.push([file, width, ...buttons].join(" "));
  }
  expect(wide).toEqual([]);
  expect(troubles).toEqual([]);
});

test("the bar of the bench view has room for its words", async () => {
  const { page } = await visitor.open(`${module}/bench/`, { viewport: { width: 320, height: 640 } });
  await page.getByRole("button", { name: "Weiter", exact: true }).click();
  await page.getByText("Schritt 1 von").waitFor();
  expect(await page.evaluate(spilled)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
