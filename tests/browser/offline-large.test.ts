/** A site too large to be kept at a first visit, and a device that has no room for it. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { moduleOf } from "../../src/browser/worker/path.ts";
import { listFiles, writeOffline } from "../../src/bundle/offline.ts";
import { type Edition, keptAtOnce } from "../../src/model/edition.ts";
import { projectDir } from "../support/project.ts";
import { type StaticServer, serveFolder } from "../support/static-server.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";

const site = mkdtempSync(join(tmpdir(), "benchwright-large-"));
let server: StaticServer;
const visitor = withBrowser(() => server.url, { keepsSites: true });
let edition: Edition;

/** The list says of each file that it is many times as large as it is, so that nothing large has to be moved. */
beforeAll(async () => {
  cpSync(inject("siteDir"), site, { recursive: true });
  for (const file of readdirSync(site).filter((each) => /^offline-|^worker\.js$/.test(each)))
    rmSync(join(site, file));
  const files = await listFiles(site);
  const times = Math.ceil(keptAtOnce / files.reduce((sum, [, , bytes]) => sum + bytes, 0)) + 1;
  const listed = files.map(([path, digest, bytes]) => [path, digest, bytes * times] as const);
  await writeOffline({ outDir: site, browserDir: join(projectDir, "src/browser"), listed });
  const list = readdirSync(site).find((name) => name.startsWith("offline-"))!;
  edition = JSON.parse(readFileSync(join(site, list), "utf8")) as Edition;
  server = await serveFolder(site, "/");
});
afterAll(async () => {
  await server?.close();
  rmSync(site, { recursive: true, force: true });
});

const ofProgramme = () => edition.files.filter(([path]) => moduleOf(path) === undefined);
const words = (page: Page) => page.locator(".kept-words");
const number = (value: number) => value.toLocaleString("en-GB");

test("of a large site a module is kept when it is opened, and everything when one says so", async () => {
  const { page } = await visitor.open("about/");
  const total = number(edition.files.length);
  await page.getByText(`${number(ofProgramme().length)} of ${total} files are kept`).waitFor();
  const keep = page.getByRole("button", { name: "Keep everything on this device" });
  await keep.waitFor();
  expect(await axeViolations(page)).toEqual([]);

  const other = await page.context().newPage();
  await other.goto(`${server.url}modules/slotted-screws/`);
  const ofScrews = edition.files.filter(([path]) => moduleOf(path) === "slotted-screws");
  await expect
    .poll(
      async () => {
        await page.reload();
        return words(page).textContent();
      },
      { timeout: 60_000 },
    )
    .toContain(`${number(ofProgramme().length + ofScrews.length)} of ${total} files`);

  await page.context().setOffline(true);
  await other.goto(`${server.url}modules/slotted-screws/quiz/`);
  expect(await other.locator("h1").innerText()).toBe("Quiz");
  await other.goto(`${server.url}modules/bench-drill/`);
  expect(await other.locator("h1").innerText()).toBe("Not on this device");
  await page.context().setOffline(false);

  await keep.press("Enter");
  await page.getByText("The whole site is kept on this device").waitFor({ timeout: 120_000 });
  expect(await keep.count()).toBe(0);
  await page.context().setOffline(true);
  await other.goto(`${server.url}modules/bench-drill/`);
  expect(await other.locator("h1").innerText()).toContain("drill");
}, 240_000);

test("a device without room is told of, keeps what came, and goes on when there is room", async () => {
  const { page } = await visitor.open("about/");
  await page.getByRole("button", { name: "Keep everything on this device" }).waitFor();
  const session = await page.context().newCDPSession(page);
  const { usage } = await session.send("Storage.getUsageAndQuota", { origin: new URL(server.url).origin });
  await session.send("Storage.overrideQuotaForOrigin", {
    origin: new URL(server.url).origin,
    // The modules take more.
    quotaSize: usage + 300_000,
  });
  const keep = page.getByRole("button", { name: "Keep everything on this device" });
  await keep.click();
  await page.getByText("The browser gives this site no more room.").waitFor({ timeout: 120_000 });
  await expect
    .poll(() => words(page).textContent())
    .toMatch(/\d+ of \d+ files came\. Make room on the device/);
  expect(await keep.evaluate((button) => button === document.activeElement)).toBe(true);
  expect(await axeViolations(page)).toEqual([]);
  await session.send("Storage.overrideQuotaForOrigin", { origin: new URL(server.url).origin });
  await keep.press("Enter");
  await page.getByText("The whole site is kept on this device").waitFor({ timeout: 120_000 });
}, 240_000);
