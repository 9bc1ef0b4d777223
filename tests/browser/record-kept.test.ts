/** How the record is kept: by windows side by side, without storage, without room; erased, and taken to another device. */
import type { Page } from "playwright-core";
import { describe, expect, test, vi } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { pressByKey, tabTo } from "./site/keyboard.ts";
import { withRecordSite } from "./site/record-site.ts";
import { addFile, cellText, doingsOn, logCell, savedBy, savedRecord } from "./site/record-steps.ts";

// Each of these goes over several pages.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));
const url = (path: string): string => `${site.url("localhost")}${path}index.html`;
const readButton = (page: Page) => page.getByRole("button", { name: "I have read this sheet" });

test("two windows at once lose nothing, and the record shows what the other one adds", async () => {
  const { page: first } = await visitor.open("modules/box/index.html");
  const [second, record] = [await first.context().newPage(), await first.context().newPage()];
  await second.goto(url("hazards/vapour/"));
  await record.goto(url("record/"));
  await record.getByRole("heading", { name: "Sign-offs" }).waitFor();
  await Promise.all([
    readButton(first).click(),
    second.getByRole("button", { name: "I have read and understood this" }).click(),
  ]);
  await expect.poll(() => cellText(record, "Read")).toMatch(/^\d.*hazards 1 of 1$/);
  const { file } = await savedRecord(record);
  expect(file.events.map(({ kind }) => kind).sort()).toEqual(["hazard", "read"]);
});

test("two windows that begin at the same moment begin one record", async () => {
  const { page } = await visitor.open("about/index.html");
  const windows = await Promise.all([1, 2, 3].map(() => page.context().newPage()));
  await Promise.all(windows.map((window) => window.goto(url("record/"))));
  const keyOf = (window: Page) => window.locator('[data-fact="key"] dd').innerText();
  for (const window of windows) await expect.poll(() => keyOf(window)).toMatch(/^… \w{8}$/);
  expect(new Set(await Promise.all(windows.map(keyOf))).size).toBe(1);
});

describe("where the browser keeps nothing", () => {
  const denied = (page: Page) =>
    page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("denied", "SecurityError");
      };
    });

  test("the pages say so and work on, and the file is there to be saved", async () => {
    const { page, troubles } = await visitor.open("about/index.html");
    await denied(page);
    await page.goto(url("modules/box/"));
    await readButton(page).click();
    await page.getByText("This browser does not let the page keep anything.").waitFor();
    const doings = doingsOn(page, site, site.url("localhost"));
    await doings.openRecord();
    expect(await page.getByRole("alert").innerText()).toContain("does not let the page keep anything");
    await page.getByLabel("Name, as your mentor knows you").fill("Jo");
    await page.keyboard.press("Enter");
    await page.getByText("Kept. Your file will say Jo.").waitFor();
    const { file } = await savedRecord(page);
    expect(file.name).toBe("Jo");
    expect(troubles).toEqual([]);
  });
});

test("where there is no room, what is done stays until the page is left, and is in the file", async () => {
  const { page } = await visitor.open("record/index.html");
  const doings = doingsOn(page, site, site.url("localhost"));
  await doings.read();
  await page.goto(url("modules/box/dry-run/"));
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  const steps = page.getByRole("region", { name: /^Still to do/ }).getByRole("button");
  for (let left = await steps.count(); left > 0; left = await steps.count()) {
    for (const step of await steps.all()) {
      await step.click();
      if ((await steps.count()) < left) break;
      const goOn = page.getByRole("button", { name: "Go on from before this step" });
      if ((await goOn.count()) > 0) await goOn.click();
    }
  }
  await page.getByText("There is no room left to keep this in the browser").waitFor();
  const { file } = await savedRecord(page);
  expect(file.events.map(({ kind }) => kind)).toEqual(["read", "run"]);
});

test("erasing asks first, takes everything away, and other windows notice", async () => {
  const { page } = await visitor.open("record/index.html");
  const doings = doingsOn(page, site, site.url("localhost"));
  await doings.read();
  await page.evaluate(() => localStorage.setItem("benchwright:practice:x", "1"));
  await doings.openRecord();
  const key = await page.locator('[data-fact="key"]').innerText();
  const other = await page.context().newPage();
  await other.goto(url("record/"));
  await expect.poll(() => cellText(other, "Read")).toMatch(/^\d/);
  const erase = page.getByRole("button", { name: "Erase everything on this device" });
  await erase.click();
  expect(await page.getByText(/1 entry is in no file and will be gone for good/).count()).toBe(1);
  await page.getByRole("button", { name: "No, keep it" }).click();
  expect(await cellText(page, "Read")).toMatch(/^\d/);
  await erase.click();
  await page.getByRole("button", { name: "Yes, erase it all" }).click();
  await page.getByText(/^Erased\./).waitFor();
  for (const window of [page, other]) await expect.poll(() => logCell(window, "Read").innerText()).toBe("");
  expect(await page.evaluate(() => localStorage.length)).toBe(0);
  await page.reload();
  expect(await page.locator('[data-fact="key"]').innerText()).not.toBe(key);
  const { file } = await savedRecord(page);
  expect(file.events).toEqual([]);
});

test("by keys alone: a name, the file, what is next, and erasing", async () => {
  const { page } = await visitor.open("record/index.html");
  await tabTo(page, page.locator("summary").first());
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: "Read the hazard “Vapour”" }).waitFor();
  await tabTo(page, page.getByLabel("Name, as your mentor knows you"));
  await page.keyboard.type("Jo");
  await page.keyboard.press("Enter");
  await page.getByText("Kept. Your file will say Jo.").waitFor();
  const saved = await savedBy(page, () =>
    pressByKey(page, page.getByRole("button", { name: "Save my record as a file" })),
  );
  expect(saved.name).toMatch(/^jo-\d{4}-\d\d-\d\d\.record\.json$/);
  await tabTo(page, page.getByLabel("Add a file to it"));
  await pressByKey(page, page.getByRole("button", { name: "Erase everything on this device" }));
  await expect
    .poll(() => page.locator(".ask-twice .warning").evaluate((it) => it === document.activeElement))
    .toBe(true);
  await pressByKey(page, page.getByRole("button", { name: "Yes, erase it all" }));
  await page.getByText(/^Erased\./).waitFor();
  await expect.poll(() => page.locator('[data-fact="name"] dd').innerText()).toBe("");
});

test("a record goes to another device: the key first, locked, then the file", async () => {
  const { page: old } = await visitor.open("record/index.html");
  const doings = doingsOn(old, site, site.url("localhost"));
  await doings.read();
  await doings.openRecord();
  const record = await savedRecord(old);
  await old.getByLabel("Passphrase, 12 letters or more").fill("three blue ha");
  await old.getByLabel("The same once more").fill("three blue hats");
  await old.getByRole("button", { name: "Save my key as a file" }).click();
  await old.getByText("The two passphrases are not the same.").waitFor();
  await old.getByLabel("Passphrase, 12 letters or more").fill("three blue hats");
  const key = await savedBy(old, () => old.getByRole("button", { name: "Save my key as a file" }).click());
  expect(key.name).toMatch(/\.key\.json$/);
  const { page: fresh } = await visitor.open("record/index.html");
  expect(await addFile(fresh, record.text)).toContain("subject-mismatch");
  const take = async (passphrase: string) => {
    const file = { name: key.name, mimeType: "application/json", buffer: Buffer.from(key.text) };
    await fresh.getByLabel("Key file").setInputFiles(file);
    await fresh.getByLabel("Its passphrase").fill(passphrase);
    await fresh.getByRole("button", { name: "Take up this key" }).click();
  };
  await take("three red hats");
  await fresh.getByText("The passphrase does not open this key file").waitFor();
  await take("three blue hats");
  await fresh.getByText(/^Taken up\./).waitFor();
  expect(await addFile(fresh, record.text)).toContain("Added 1 entry from file.json.");
  const { file } = await savedRecord(fresh);
  expect(file.owner).toBe(record.file.owner);
  expect(file.events).toEqual(record.file.events);
});
