/** A site without its network: kept at the first visit, changed by whole editions only. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { writeOffline } from "../../src/bundle/offline.ts";
import { type Edition, editionFile } from "../../src/model/edition.ts";
import { projectDir } from "../support/project.ts";
import { type StaticServer, serveFolder } from "../support/static-server.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { pageOfEachKind } from "./site/pages.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-offline-"));
/** What the server gives out is what this leads to. */
const current = join(folder, "current");
let server: StaticServer;
const visitor = withBrowser(() => server.url, { keepsSites: true });

beforeAll(async () => {
  cpSync(inject("siteDir"), join(folder, "a"), { recursive: true });
  await makeEdition("b");
  await makeEdition("broken");
  rmSync(join(folder, "broken", "hazards", "index.html"));
  server = await serveFolder(current, "/a/path/below/");
});
afterAll(async () => {
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The same site, in which every page says which edition it is. */
async function makeEdition(name: string): Promise<void> {
  const outDir = join(folder, name);
  cpSync(join(folder, "a"), outDir, { recursive: true });
  for (const file of readdirSync(outDir).filter((each) => each.startsWith("offline-")))
    rmSync(join(outDir, file));
  rmSync(join(outDir, "worker.js"));
  for (const file of readdirSync(outDir, { recursive: true, encoding: "utf8" })) {
    if (!file.endsWith(".html")) continue;
    const html = readFileSync(join(outDir, file), "utf8");
    writeFileSync(join(outDir, file), html.replace("<footer", `<footer data-edition="${name}"`));
  }
  await writeOffline({ outDir, browserDir: join(projectDir, "src/browser") });
}

function publish(name: string): void {
  rmSync(current, { force: true });
  symlinkSync(join(folder, name), current);
}

const editionOn = async (page: Page): Promise<string> =>
  (await page.locator("footer").getAttribute("data-edition")) ?? "a";

/** The page about the site says when all of it is kept. */
async function visitUntilKept(path = ""): Promise<Page> {
  const { page } = await visitor.open(path);
  const about = await page.context().newPage();
  await about.goto(`${server.url}about/`);
  await about.getByText("The whole site is kept on this device").waitFor({ timeout: 120_000 });
  await about.close();
  return page;
}

describe("after one visit, with the network cut", () => {
  let page: Page;
  beforeAll(async () => {
    publish("a");
    page = await visitUntilKept();
    await page.context().setOffline(true);
  }, 180_000);

  test.each(pageOfEachKind())("$kind: $path opens whole", async ({ path }) => {
    const failed: string[] = [];
    const note = (request: { url(): string }) => failed.push(request.url());
    page.on("requestfailed", note);
    const response = await page.goto(server.url + path);
    expect(response?.fromServiceWorker()).toBe(true);
    await page.evaluate(() => document.fonts.ready);
    const pictures = page.locator("img");
    await pictures.evaluateAll((all) => {
      for (const each of all) (each as HTMLImageElement).loading = "eager";
    });
    await expect
      .poll(() =>
        pictures.evaluateAll((all) => all.every((each) => (each as HTMLImageElement).naturalWidth > 0)),
      )
      .toBe(true);
    await expect.poll(() => page.locator(".needs-script").count()).toBe(0);
    page.off("requestfailed", note);
    expect(failed).toEqual([]);
  });

  test("the search finds, and what it finds opens", async () => {
    await page.goto(`${server.url}search/?q=governor`);
    await page.locator(".search-results a").first().click();
    await expect.poll(() => page.locator("h1").count()).toBe(1);
    expect(page.url()).toContain("/modules/");
  });

  test("the record opens with the programme's data", async () => {
    await page.goto(`${server.url}record/`);
    await expect.poll(() => page.locator("main").innerText(), { timeout: 30_000 }).toContain("Spring");
  });

  test("an address without its file, without its slash, with query and place", async () => {
    for (const path of ["modules/spring-motor/?from=paper#let-down", "modules/spring-motor"]) {
      await page.goto(server.url + path);
      expect(await page.locator("h1").innerText()).not.toBe("");
      expect(new URL(page.url()).pathname).toBe("/a/path/below/modules/spring-motor/");
      await expect
        .poll(() => page.locator("footer").evaluate((foot) => getComputedStyle(foot).maxWidth))
        .not.toBe("none");
    }
  });

  test("an unknown address gives a page that helps, and has no fault of accessibility", async () => {
    await page.goto(`${server.url}modules/no-such-thing/`);
    expect(await page.locator("h1").innerText()).toBe("Not on this device");
    expect(await axeViolations(page)).toEqual([]);
    await page.getByRole("link", { name: "All modules" }).click();
    await expect.poll(() => page.locator("h1").innerText()).toBe("Modules");
  });
});

/** The browser looks for a newer edition when a page is opened. */
const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
  });

describe("a newer edition", () => {
  test("is told of, waits, and then is everywhere, while a page that is open keeps its own", async () => {
    publish("a");
    const page = await visitUntilKept("modules/");
    const other = await page.context().newPage();
    await other.goto(`${server.url}search/`);
    publish("b");
    await lookForNewer(page);
    const notice = page.getByRole("status").filter({ hasText: "A newer edition of this site is ready." });
    await notice.waitFor({ timeout: 120_000 });
    expect(await axeViolations(page)).toEqual([]);
    const third = await page.context().newPage();
    await third.goto(`${server.url}tools/`);
    expect(await editionOn(third)).toBe("a");
    await notice.getByRole("button", { name: "Use it now" }).press("Enter");
    await expect.poll(() => editionOn(page).catch(() => ""), { timeout: 60_000 }).toBe("b");
    // The page that was open goes on with what it began with.
    const asked = () => other.evaluate(async () => (await fetch("../about/")).text());
    expect(await editionOn(other)).toBe("a");
    expect(await asked()).not.toContain("data-edition");
    await other.reload();
    expect(await editionOn(other)).toBe("b");
    expect(await asked()).toContain('data-edition="b"');
    await page.context().setOffline(true);
    for (const path of ["", "hazards/", "modules/spring-motor/quiz/"]) {
      await page.goto(server.url + path);
      expect(await editionOn(page)).toBe("b");
    }
  });

  test("fetches only what has changed", async () => {
    publish("a");
    const page = await visitUntilKept();
    const fetched: string[] = [];
    page.context().on("request", (request) => {
      if (request.serviceWorker() !== null) fetched.push(new URL(request.url()).pathname);
    });
    publish("b");
    await lookForNewer(page);
    await page.getByText("A newer edition of this site is ready.").waitFor({ timeout: 120_000 });
    expect(fetched.filter((path) => /\.(woff2|css|svg|png)$/.test(path))).toEqual([]);
  });

  test("that does not come whole changes nothing", async () => {
    publish("a");
    const page = await visitUntilKept();
    publish("broken");
    await lookForNewer(page);
    await page.goto(`${server.url}about/`);
    await page.getByText("The file hazards/index.html does not come.").waitFor({ timeout: 120_000 });
    expect(await page.getByText("A newer edition of this site is ready.").count()).toBe(0);
    await page.context().setOffline(true);
    for (const path of ["", "hazards/", "tools/"]) {
      await page.goto(server.url + path);
      expect(await editionOn(page)).toBe("a");
    }
  });
});

test("where the site comes over plain http, nothing breaks and the page about it says why", async () => {
  publish("a");
  const { page } = await visitor.open("about/");
  const address = new URL(server.url);
  address.hostname = "workshop.test";
  await page.goto(`${address.href}about/`);
  const words = page.getByText("came over plain http");
  await words.waitFor();
  expect(await words.count()).toBe(1);
  expect(await axeViolations(page)).toEqual([]);
});

test("from disk the page about it says that nothing needs keeping", async () => {
  publish("a");
  const { page } = await visitor.open("");
  await page.goto(`file://${join(folder, "a", "about", "index.html")}`);
  const words = page.getByText("You read these pages as files.");
  await words.waitFor();
  expect(await words.count()).toBe(1);
});

test("the list names every file of the site but the worker and itself", () => {
  const site = join(folder, "a");
  const worker = readFileSync(join(site, "worker.js"), "utf8");
  const version = /benchwrightEdition="([\w-]+)"/.exec(worker)?.[1] ?? "";
  const { files } = JSON.parse(readFileSync(join(site, editionFile(version)), "utf8")) as Edition;
  const there = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1))
    .filter((file) => !["worker.js", editionFile(version), "built-by-benchwright.txt"].includes(file));
  expect(files.map(([path]) => path)).toEqual(there.sort());
});
