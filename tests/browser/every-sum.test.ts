/** Each bench sum alike: by keys, without a network, with what it rests on, by link, on paper, in either unit. */
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { tabTo } from "./site/keyboard.ts";

const visitor = withBrowser();

interface Case {
  readonly id: string;
  readonly name: string;
  /** What is written or chosen, by the field's name, in the order of the page. */
  readonly fields: Readonly<Record<string, string>>;
  /** What must be in the answer, by whom. */
  readonly says: readonly string[];
  /** The same figure once inches stand first; undefined where it asks for its units itself. */
  readonly inInches?: string;
  readonly formula: RegExp;
  readonly sources: RegExp;
  /** Undefined where nothing is assumed. */
  readonly assumed?: RegExp;
}

const cases: readonly Case[] = [
  {
    ...{ id: "convert", name: "Units" },
    fields: { quantity: "5 lbf·in", unit: "N·m" },
    // NIST SP 811: 1 lbf·in = 0.112 984 8 N·m.
    says: ["5 lbf·in = 0.5649 N·m"],
    formula: /1 in = 25\.4 mm/,
    sources: /NIST SP 811/,
  },
  {
    ...{ id: "thread", name: "A thread by its name" },
    fields: { thread: "M6" },
    // ISO 724, ISO 2306, ISO 273.
    says: ["6 mm", "5.35 mm", "5 mm", "6.6 mm"],
    inInches: "0.2362 in",
    formula: /d₂ = d − 0\.75 H/,
    sources: /ISO/,
    assumed: /Basic sizes/,
  },
  {
    ...{ id: "identify", name: "Which thread is this?" },
    fields: { diameter: "5.95 mm", pitch: "1 mm" },
    says: ["M6", "0 BA", "must not be mixed"],
    inInches: "0.2362 in (6 mm)",
    formula: /ISO 965-1/,
    sources: /ISO 261|ISO 68/,
    assumed: /outside diameter of a screw was measured/,
  },
  {
    ...{ id: "torque", name: "Tightening torque and preload" },
    fields: { thread: "M8x1", class: "8.8", friction: "0.10" },
    // VDI 2230-1, worked out by hand: see the test of the page.
    says: ["22.8 N·m", "20.7 kN"],
    inInches: "16.8 lbf·ft (22.8 N·m)",
    formula: /FM = share × Rp × As/,
    sources: /VDI 2230-1.*ISO 898-1/,
    assumed: /Assumed/,
  },
  {
    ...{ id: "strip", name: "Does the screw break or the thread strip?" },
    fields: { thread: "M6", engagement: "8 mm", material: "brass", class: "8.8" },
    // ISO 898-1: 20.1 mm² and 800 MPa.
    says: ["the screw breaks first", "16 kN"],
    inInches: "lbf",
    formula: /ASn = π·d_min\/P/,
    sources: /FED-STD-H28\/2B/,
    assumed: /Both threads are whole/,
  },
  {
    ...{ id: "vapour", name: "Vapour in a room" },
    fields: { substance: "white-spirit", amount: "100 mL", room: "30 m³" },
    // 78 g / 128 g/mol · 24.06 L/mol = 14.66 L, in 30 m³ 488.7 ppm, rounded up.
    says: ["489 ppm", "14.7 L"],
    inInches: "ft³",
    formula: /V = liquid × 1000 · SG · Vm\/MW/,
    sources: /NIOSH Pocket Guide/,
    assumed: /128 g\/mol.*All of the liquid evaporates/s,
  },
  {
    ...{ id: "air", name: "Fresh air needed" },
    fields: { substance: "acetone", rate: "50 mL/h" },
    // 39.5 g/h / 58.1 g/mol · 24.06 L/mol = 16.36 L/h, over 250 ppm 65.4 m³/h, ten times for poor mixing.
    says: ["655 m³/h"],
    inInches: "cfm (655 m³/h)",
    formula: /Q = K · vapour made in an hour ÷ limit/,
    sources: /ACGIH/,
    assumed: /Mixing factor 10/,
  },
];

const section = (page: Page, name: string): Locator => page.getByRole("region", { name, exact: true });
const said = (page: Page, name: string): Locator => section(page, name).locator("[aria-live=polite]");

/** What is read, whether or not lines may break between its words. */
const spaced = async (place: Locator): Promise<string> => (await place.innerText()).replaceAll("\u00a0", " ");

/** Writes into a line; of a list it chooses by the letters that the choice begins with, as one does by keys. */
async function fillByKeys(page: Page, { name, fields }: Case): Promise<void> {
  for (const [field, value] of Object.entries(fields)) {
    const control = section(page, name).locator(`[name="${field}"]`);
    await tabTo(page, control);
    const label = await control.evaluate((element, wanted) => {
      const options = element instanceof HTMLSelectElement ? [...element.options] : [];
      return options.find((one) => one.value === wanted)?.text;
    }, value);
    await page.keyboard.type(label ?? value);
    expect(await control.inputValue()).toBe(value);
  }
  await tabTo(page, section(page, name).getByRole("button", { name: "Work it out" }));
  await page.keyboard.press("Enter");
}

const linkOf = ({ id, fields }: Case): string =>
  `sums/?${new URLSearchParams(Object.entries(fields).map(([field, value]) => [`${id}.${field}`, value]))}`;

describe.each(cases)("$name", (one) => {
  test("is worked out by keys alone with the network gone, and says what it rests on", async () => {
    const { page, troubles } = await visitor.open("sums/");
    await page.context().setOffline(true);
    await fillByKeys(page, one);
    await said(page, one.name).getByRole("heading").first().waitFor();
    const answer = await spaced(said(page, one.name));
    for (const text of one.says) expect(answer).toContain(text);
    const all = await spaced(section(page, one.name));
    expect(all).toMatch(one.formula);
    expect(all).toMatch(RegExp(`Sources:.*(?:${one.sources.source})`));
    expect(all).toMatch(/decide|take the maker’s/);
    if (one.assumed !== undefined) expect(all).toMatch(one.assumed);
    // Whenever the address changes the browser asks for the page's icon anew.
    expect(troubles.filter((trouble) => trouble.startsWith("error:"))).toEqual([]);
    await page.context().close();
  });

  test("comes back by its link, in the unit chosen, and goes on paper alone with what it rests on", async () => {
    const { page } = await visitor.open(linkOf(one));
    const heading = said(page, one.name).getByRole("heading").first();
    await heading.waitFor();
    if (one.inInches !== undefined) {
      expect(await spaced(said(page, one.name))).not.toContain(`${one.inInches} `);
      await page.getByRole("radio", { name: "inch" }).check();
      await expect.poll(() => spaced(said(page, one.name))).toContain(one.inInches);
    }
    const answer = await spaced(said(page, one.name));
    const link = section(page, one.name).getByRole("link", { name: "Link to this sum" });
    const later = await page.context().newPage();
    await later.goto(await link.evaluate((anchor) => (anchor as HTMLAnchorElement).href));
    await expect.poll(() => spaced(said(later, one.name))).toBe(answer);
    await later.emulateMedia({ media: "print" });
    const printed = later.getByRole("region").filter({ has: later.getByRole("heading", { level: 2 }) });
    expect(await printed.count()).toBe(1);
    for (const [field, value] of Object.entries(one.fields)) {
      const control = section(later, one.name).locator(`[name="${field}"]`);
      expect(await control.isVisible()).toBe(true);
      expect(await control.inputValue()).toBe(value);
    }
    expect(await section(later, one.name).getByText("Sources:").isVisible()).toBe(true);
    expect(await section(later, one.name).locator(".sum-decides").isVisible()).toBe(true);
    const pdf = await later.pdf({ format: "A4" });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.context().close();
  });
});
