/** `serve` at an address where the browser has kept a built site: what was kept goes, and the page is the one being written. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { changed, soundFiles, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { serveFolder } from "../support/static-server.ts";
import { withBrowser } from "./site/browser.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-served-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const kept = join(folder, "kept");
const built = await runTool(["build", "--content", writeFolder(soundFiles), "--to", kept]);
if (built.code !== 0) throw new Error(`the programme can't be built:\n${built.stdout}${built.stderr}`);

/** Calls `serve`; ends when it serves, with what stops it. */
async function serve(port: number): Promise<() => Promise<void>> {
  const content = writeFolder(
    changed("modules/box/module.md", "title: Open the box", "title: Open the chest"),
  );
  const place = ["--content", content, "--to", join(folder, "written")];
  let stop = () => {};
  let ended: Promise<unknown> = Promise.resolve();
  await new Promise<void>((serves, fails) => {
    let said = "";
    ended = runTool(["serve", ...place, "--port", String(port), "--host", "127.0.0.1"], {
      started: ({ kill }) => {
        stop = () => kill("SIGTERM");
      },
      heard: (_, text) => {
        said += text;
        if (said.includes("Serving ")) serves();
      },
    }).then(() => fails(new Error(`serve has ended:\n${said}`)));
  });
  return async () => {
    stop();
    await ended;
  };
}

const visitor = withBrowser("http://localhost/", { keepsSites: true });

const registrations = (page: Page): Promise<number> =>
  page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length);
const caches = (page: Page): Promise<string[]> => page.evaluate(() => self.caches.keys());
const heading = (page: Page): Promise<string> => page.locator("h1").innerText();

test("the worker that was left there goes with all that it kept, and nothing of others", {
  timeout: 300_000,
}, async () => {
  const host = await serveFolder(kept, "/");
  const port = Number(new URL(host.url).port);
  const { page } = await visitor.open(`${host.url}about/`);
  await page.getByText("The whole site is kept on this device").waitFor({ timeout: 120_000 });
  await page.evaluate(() => self.caches.open("benchwright /elsewhere/ 1"));
  const before = await caches(page);
  expect(before.filter((name) => name.startsWith("benchwright / "))).not.toEqual([]);
  await host.close();
  await page.goto(`${host.url}modules/box/`);
  await expect.poll(() => heading(page)).toBe("Open the box");

  const stop = await serve(port);
  try {
    // At first the worker still answers; the page that it gives has the browser look for a newer one.
    // Its leaving loads the page anew, which may cut this short.
    await page.goto(`${host.url}modules/box/`).catch(() => undefined);
    await expect.poll(() => heading(page), { timeout: 60_000 }).toBe("Open the chest");
    await expect.poll(() => registrations(page)).toBe(0);
    await expect.poll(() => caches(page)).toEqual(["benchwright /elsewhere/ 1"]);
    await expect.poll(() => page.locator('script[src="/_reload.js"]').count()).toBe(1);
  } finally {
    await stop();
  }
});
