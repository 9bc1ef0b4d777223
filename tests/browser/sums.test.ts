/** The bench sums, as one works with them. */
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { hasFocus, pressByKey, tabTo } from "./site/keyboard.ts";

const visitor = withBrowser();

const sum = (page: Page, name: string) => page.getByRole("region", { name });
const torque = (page: Page) => sum(page, "Tightening torque and preload");
const answer = (page: Page, name: string) => sum(page, name).getByRole("heading", { level: 3 }).first();

/** What is read, whether or not lines may break between its words. */
const spaced = async (place: Locator): Promise<string> => (await place.innerText()).replaceAll("\u00a0", " ");

const filled = "sums/?torque.thread=M8x1&torque.class=8.8&torque.friction=0.10";

test("a sum is worked out by keys alone, and the answer is said", async () => {
  const { page, troubles } = await visitor.open("sums/");
  const section = torque(page);
  await tabTo(page, section.getByLabel("Thread"));
  await page.keyboard.type("M8x1");
  await tabTo(page, section.getByLabel("Class of the screw"));
  await page.keyboard.type("8.8");
  await tabTo(page, section.getByLabel("Friction").first());
  await page.keyboard.type("0.10");
  await page.keyboard.press("Enter");
  // VDI 2230-1, worked out by hand: 0.9 · 640 · 39.17 / 1.088 = 20.7 kN, · (0.16 + 0.58 · 7.350 · 0.1 + 5.15 · 0.1) mm.
  const said = section.locator("[aria-live=polite]");
  await expect.poll(() => spaced(said)).toContain("M8x1, 8.8: torque 22.8 N·m (16.8 lbf·ft)");
  expect(await said.innerText()).toContain("20.7 kN");
  expect(await section.innerText()).toMatch(/Sources: VDI 2230-1.*ISO 898-1/);
  expect(await section.innerText()).toContain("your mentor decides");
  expect(troubles).toEqual([]);
});

test("what is wrong is told beside its field, where the focus goes, and can be mended there", async () => {
  const { page } = await visitor.open("sums/");
  const section = torque(page);
  await section.getByLabel("Thread").fill("M8x1.1");
  await section.getByLabel("Class of the screw").fill("8.8");
  await pressByKey(page, section.getByRole("button", { name: "Work it out" }));
  const thread = section.getByLabel("Thread");
  expect(await hasFocus(thread)).toBe(true);
  const description = await thread.evaluate((field) =>
    (field.getAttribute("aria-describedby") ?? "")
      .split(" ")
      .map((id) => document.getElementById(id)?.textContent)
      .join(" "),
  );
  expect(description).toMatch(/Found “M8x1\.1”; expected .* M8x1/);
  expect(await section.locator("[aria-invalid=true]").count()).toBe(2);
  expect(await section.locator("[aria-live=polite]").innerText()).toContain("2 fields to mend");
  expect(await axeViolations(page)).toEqual([]);
  await thread.fill("M8x1");
  await section.getByLabel("Friction").first().fill("0.1");
  await page.keyboard.press("Enter");
  await answer(page, "Tightening torque and preload").waitFor();
  expect(await section.locator("[aria-invalid]").count()).toBe(0);
});

test("an answer stands only as long as its fields are as they were", async () => {
  const { page } = await visitor.open(filled);
  await answer(page, "Tightening torque and preload").waitFor();
  const friction = torque(page).getByLabel("Friction").first();
  await friction.focus();
  await page.keyboard.type("2");
  expect(await torque(page).getByText("22.8 N·m").count()).toBe(0);
  await page.keyboard.press("Tab");
  expect(await answer(page, "Tightening torque and preload").innerText()).not.toContain("22.8");
});

describe("a link", () => {
  test("brings back what was filled in, on another device", async () => {
    const { page } = await visitor.open("sums/");
    const section = sum(page, "Vapour in a room");
    await section.getByLabel("Substance").selectOption("white-spirit");
    await section.getByLabel("Liquid that evaporates").fill("100 mL");
    await section.getByLabel("Room", { exact: true }).fill("4 m x 3 m x 2.4 m");
    await section.getByText("Figures of its safety data sheet").click();
    await section.getByLabel("Flash point").fill("41 °C");
    await section.getByLabel("Where the figures come from").fill("sheet of 3 May, section 9 & 8");
    await section.getByRole("button", { name: "Work it out" }).click();
    const said = await section.locator("[aria-live=polite]").innerText();
    expect(said).toContain("on average over the room");
    const link = await section
      .getByRole("link", { name: "Link to this sum" })
      .evaluate((anchor) => (anchor as HTMLAnchorElement).href);
    for (const address of [page.url(), link]) {
      const other = (await visitor.open(address)).page;
      const same = sum(other, "Vapour in a room");
      await expect.poll(() => same.locator("[aria-live=polite]").innerText()).toBe(said);
      expect(await same.getByLabel("Flash point").inputValue()).toBe("41 °C");
      await other.context().close();
    }
  });

  test("with what can't be is told as such, and harms nothing", async () => {
    const { page, troubles } = await visitor.open(
      "sums/?torque.thread=M8x1.1&strip.material=%3Cb%3E&x.y=1&air",
    );
    expect(await torque(page).getByText("Found “M8x1.1”").isVisible()).toBe(true);
    expect(troubles).toEqual([]);
  });

  test("leads from a thread that was found to its dimensions", async () => {
    const { page } = await visitor.open("sums/?identify.diameter=5.95+mm&identify.pitch=1+mm");
    const found = sum(page, "Which thread is this?");
    expect(await found.getByRole("rowheader").allInnerTexts()).toEqual(["M6", "0 BA"]);
    expect(await found.innerText()).toContain("M6 and 0 BA must not be mixed");
    await found.getByRole("link", { name: "0 BA" }).click();
    await expect.poll(() => answer(page, "A thread by its name").innerText()).toContain("0 BA");
  });
});

test("a screw that is none of these is not to be re-tapped", async () => {
  const { page } = await visitor.open("sums/?identify.diameter=5.3+mm&identify.pitch=2+mm");
  const said = sum(page, "Which thread is this?").locator("[aria-live=polite]");
  await expect.poll(() => said.innerText()).toMatch(/None of the threads known here fits.*do not re-tap/s);
});

test("sums and the choice of units are there after a reload; the choice on a later visit too", async () => {
  const { page } = await visitor.open("sums/");
  const section = sum(page, "A thread by its name");
  await section.getByLabel("Thread").fill("1/4 in BSF");
  await page.keyboard.press("Enter");
  const figure = section.getByRole("definition").first();
  expect(await figure.innerText()).toBe("6.35 mm");
  await page.getByRole("radio", { name: "inch" }).check();
  expect(await figure.innerText()).toBe("0.25 in");
  await page.reload();
  await expect.poll(() => figure.innerText()).toBe("0.25 in");
  await page.goto(page.url().replace(/\?.*/, ""));
  expect(await page.getByRole("radio", { name: "inch" }).isChecked()).toBe(true);
  expect(await section.getByLabel("Thread").inputValue()).toBe("");
});

test("clearing a sum takes it out of the address", async () => {
  const { page } = await visitor.open(filled);
  await answer(page, "Tightening torque and preload").waitFor();
  await torque(page).getByRole("button", { name: "Clear" }).click();
  expect(await hasFocus(torque(page).getByLabel("Thread"))).toBe(true);
  await expect.poll(() => new URL(page.url()).search).toBe("");
});

test("on paper go the sums that are worked out, with what they rest on", async () => {
  const { page } = await visitor.open(filled);
  await answer(page, "Tightening torque and preload").waitFor();
  await page.emulateMedia({ media: "print" });
  const section = torque(page);
  expect(await section.getByLabel("Class of the screw").isVisible()).toBe(true);
  for (const text of ["22.8 N·m", "Sources:", "your mentor decides"])
    expect(await section.getByText(text).first().isVisible()).toBe(true);
  expect(await section.getByRole("button").count()).toBe(0);
  expect(await section.getByLabel("Torque, for the way back").isVisible()).toBe(false);
  expect(await sum(page, "Units").isVisible()).toBe(false);
});

test("without script the formulas stand there with their sources and who decides", async () => {
  const { page } = await visitor.open("sums/", { javaScriptEnabled: false });
  expect(await page.getByText("needs JavaScript").isVisible()).toBe(true);
  expect(await page.getByRole("textbox").count()).toBe(0);
  for (const section of await page.locator(".sum").all()) {
    const text = await section.innerText();
    expect(text).toMatch(/How it is reckoned/);
    expect(text).toMatch(/Source: \S+/);
    expect(text).toMatch(/decide|maker/);
  }
  await page.getByRole("link", { name: "the thread chart" }).click();
  expect(await page.getByRole("rowheader", { name: "M6", exact: true }).isVisible()).toBe(true);
});

test.each(["light", "dark"] as const)("answers keep the rules of axe, %s", async (colorScheme) => {
  const { page } = await visitor.open(
    `${filled}&identify.diameter=5.95+mm&identify.pitch=1+mm&vapour.substance=acetone&vapour.amount=1+L&vapour.room=30+m³`,
    { colorScheme },
  );
  await answer(page, "Vapour in a room").waitFor();
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await axeViolations(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

test("the thread chart leads from its list to each series", async () => {
  const { page } = await visitor.open("sums/threads/");
  const links = page.getByRole("navigation", { name: "Series" }).getByRole("link");
  expect(await links.count()).toBe(7);
  await links.last().click();
  const heading = page.getByRole("heading", { level: 2 }).last();
  expect(await heading.innerText()).toBe(await links.last().innerText());
  await expect.poll(async () => (await heading.boundingBox())!.y).toBeLessThan(900);
});
