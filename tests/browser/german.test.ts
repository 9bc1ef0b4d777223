/** A programme in German: the site speaks it, on the pages and in what its scripts write. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runTool } from "../support/run-command.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { type BuiltSite, builtSite, germanContent } from "./site/in-language.ts";

const module = "modules/kaffeemuehle/";

let site: BuiltSite;
const visitor = withBrowser(() => site.url);
beforeAll(async () => {
  site = await builtSite(() => germanContent);
}, 180_000);
afterAll(() => site?.end());

test("the page says its language, dates and numbers are the language's, and so are plurals", async () => {
  const { page, troubles } = await visitor.open(module);
  expect(await page.locator("html").getAttribute("lang")).toBe("de");
  expect(await page.locator("html").getAttribute("dir")).toBeNull();
  const text = await page.locator("main").innerText();
  // CLDR: German dates have the day with a full stop before the month's name.
  expect(text).toContain("20. November 2026");
  expect(text).toContain("12 Schritte");
  // ISO 3864 and ANSI Z535 in German: Warnung; of the label under CLP: Gefahr.
  expect(await page.locator(".signal-warning").first().textContent()).toBe("Warnung");
  expect(text).toContain("Auf dem Etikett: Gefahr");
  await page.goto(`${site.url}${module}order/`);
  // A full stop parts thousands in German (CLDR).
  await expect.poll(() => page.locator("main").innerText()).toMatch(/Richtige Folgen\s+2\.856,/);
  await page.goto(`${site.url}substances/spiritus/`);
  await expect
    .poll(() => page.locator("main").innerText())
    .toContain("H225 Flüssigkeit und Dampf leicht entzündbar");
  expect(troubles).toEqual([]);
});

test("a quiz is sat, and told in German", async () => {
  const { page, troubles } = await visitor.open(`${module}quiz/`);
  const first = page.locator('[data-question="zuerst"]');
  await first.getByRole("radio", { name: "Der Deckel" }).check();
  await first.getByRole("button", { name: "Diese Antwort prüfen" }).click();
  await expect.poll(() => first.innerText()).toContain("Nicht richtig.");
  await page.getByRole("button", { name: "Antworten prüfen" }).click();
  await expect.poll(() => page.locator("main").innerText()).toMatch(/Ohne Antwort: 8 Fragen \(/);
  await page.getByRole("button", { name: "Antworten prüfen" }).click();
  await expect.poll(() => page.locator("main").innerText()).toContain("Noch nicht bestanden");
  expect(await axeViolations(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

test("the search finds German words as they are written, beginnings of them, and with or without an umlaut", async () => {
  const { page } = await visitor.open("search/");
  const found = page.getByRole("region", { name: "Gefunden" }).getByRole("link");
  for (const word of ["Mahlkegel", "Kaffeem", "Dämpfe", "dampfe"]) {
    await page.getByRole("searchbox").fill(word);
    await expect.poll(() => found.count(), { message: word }).toBeGreaterThan(0);
  }
  await expect.poll(() => page.locator(".search-status").textContent()).toMatch(/\d+ Seiten? gefunden/);
});

test("a sum takes and gives a decimal comma", async () => {
  const { page } = await visitor.open("sums/");
  const sum = page.locator("#convert");
  await sum.locator("[name=quantity]").fill("0,9 N·m");
  await sum.locator("[name=unit]").fill("lbf·in");
  await sum.getByRole("button", { name: "Berechnen" }).click();
  // NIST SP 811, Appendix B: 1 lbf·in = 0.112 984 8 N·m.
  await expect.poll(() => sum.innerText()).toMatch(/0,9\sN·m = 7,966\slbf·in/);
});

test("a module's one file speaks it too, where a figure is enlarged", { timeout: 180_000 }, async () => {
  const file = join(site.folder, "..", "kaffeemuehle.html");
  const call = ["build", "--content", germanContent, "--single", "kaffeemuehle", "--to", file];
  const { code, stderr } = await runTool(call);
  expect(code, stderr).toBe(0);
  const { page } = await visitor.open("");
  await page.goto(`${pathToFileURL(file).href}#part_quiz`);
  await page.locator("#part_quiz").getByRole("button", { name: "Vergrößern" }).click();
  const dialog = page.getByRole("dialog", { name: "Abbildung vergrößert" });
  await dialog.waitFor();
  await dialog.getByRole("button", { name: "Schließen" }).click();
  await dialog.waitFor({ state: "detached" });
});
