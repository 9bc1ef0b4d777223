/** A site from the cache is the site that was built; whatever was touched since is not used. */
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { buildSite } from "../../src/build.ts";
import { keepSite, restoreSite } from "../../src/bundle/site-cache.ts";
import { digestOf } from "../../src/read/digest.ts";
import { changed, soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { treeOf } from "../support/tree.ts";

const module = "modules/box/module.md";

test("the second build of the same content gives the same bytes, a changed one does not come from the cache", async () => {
  const folder = temporaryFolder();
  const options = { siteDir: join(folder, "site"), cacheDir: join(folder, "cache") };
  const contentDir = writeFolder(soundFiles);
  const { summary } = await buildSite({ ...options, contentDir });
  const cold = treeOf(options.siteDir);
  rmSync(options.siteDir, { recursive: true });
  expect((await buildSite({ ...options, contentDir })).summary).toMatchObject({
    pages: summary.pages,
    modules: 1,
  });
  expect(treeOf(options.siteDir)).toEqual(cold);
  const other = writeFolder(changed(module, "title: Open the box", "title: Open the chest"));
  await buildSite({ ...options, contentDir: other });
  expect(readFileSync(join(options.siteDir, "modules/box/index.html"), "utf8")).toContain("Open the chest");
  expect(treeOf(options.siteDir)).not.toEqual(cold);
});

test("a warning is told each time, whether the site is made anew or comes from the cache", async () => {
  const folder = temporaryFolder();
  const options = { siteDir: join(folder, "site"), cacheDir: join(folder, "cache") };
  const contentDir = writeFolder(changed(module, "record-for: lid-on\n", ""));
  for (const _ of [1, 2]) {
    const { diagnostics } = await buildSite({ ...options, contentDir });
    expect(diagnostics.map(({ code }) => code)).toEqual(["record-nowhere"]);
  }
});

test("an entry that was touched, cut short or is not there gives nothing", () => {
  const folder = temporaryFolder();
  const [site, cache, out] = ["site", "cache", "out"].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  mkdirSync(join(site, "a"), { recursive: true });
  writeFileSync(join(site, "a", "page.html"), "page");
  mkdirSync(cache);
  expect(restoreSite(cache, "d1", out)).toBeUndefined();
  keepSite(cache, "d1", site, { pages: 1 });
  expect(restoreSite(cache, "d1", out)).toEqual({ pages: 1 });
  expect(readFileSync(join(out, "a", "page.html"), "utf8")).toBe("page");
  appendFileSync(join(out, "a", "page.html"), "!");
  expect(restoreSite(cache, "d1", join(folder, "again"))).toBeUndefined();
  writeFileSync(join(cache, "d1.json"), "{");
  expect(restoreSite(cache, "d1", join(folder, "again"))).toBeUndefined();
});

test("the two newest sites are kept", () => {
  const folder = temporaryFolder();
  const site = join(folder, "site");
  mkdirSync(site);
  writeFileSync(join(site, "page.html"), "page");
  for (const digest of ["d1", "d2", "d3"]) keepSite(join(folder, "cache"), digest, site, {});
  expect(readdirSync(join(folder, "cache")).filter((name) => name.endsWith(".json"))).toHaveLength(2);
  expect(existsSync(join(folder, "cache", "d3.json"))).toBe(true);
});

test("the digest follows names and bytes, and nothing is said of what could not be read", () => {
  const folder = writeFolder(soundFiles);
  const digest = digestOf([folder]);
  expect(digest).toMatch(/^[0-9a-f]{64}$/);
  expect(digestOf([writeFolder(soundFiles)])).toBe(digest);
  expect(digestOf([writeFolder(changed(module, "Prose.", "Prose!"))])).not.toBe(digest);
  expect(digestOf([join(folder, "nowhere")])).toBeUndefined();
});
