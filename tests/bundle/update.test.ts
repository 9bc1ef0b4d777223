/** A site that is changed in place is the site that was meant, whether or not the build was killed on the way. */
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { marker, type Standing, stillStands, swapIn } from "../../src/bundle/swap.ts";
import { finishUpdate } from "../../src/bundle/update.ts";
import { temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { treeOf } from "../support/tree.ts";

function fill(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(folder, path, ".."), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** A site of three files, as a first build leaves it. */
async function built(): Promise<{ folder: string; site: string; standing: Standing }> {
  const folder = temporaryFolder();
  const site = join(folder, "site");
  const standing: Standing = {};
  await swapIn(
    site,
    async (beside) => fill(beside, { "index.html": "1", "a/index.html": "1", "b/c/index.html": "1" }),
    standing,
  );
  return { folder, site, standing };
}

const withoutMarker = (site: string): string[] =>
  readdirSync(site, { recursive: true, encoding: "utf8" })
    .filter((path) => path !== marker)
    .sort();

test("what changed is put in place, what stays is left, what is gone is gone with its folders", async () => {
  const { folder, site, standing } = await built();
  for (const text of ["2", "3"]) {
    await swapIn(
      site,
      async (beside, otherwise) => {
        fill(beside, { "a/index.html": text, [`assets/${text}.js`]: text });
        otherwise.update(["index.html"]);
      },
      standing,
    );
    expect(withoutMarker(site)).toEqual(["a", "a/index.html", "assets", `assets/${text}.js`, "index.html"]);
    expect(readFileSync(join(site, "a/index.html"), "utf8")).toBe(text);
    expect(readFileSync(join(site, "index.html"), "utf8")).toBe("1");
    expect(readdirSync(folder)).toEqual(["site"]);
  }
  expect(stillStands(site, standing)).toBe(true);
});

test("a change that fails or is left leaves the site as it was", async () => {
  const { folder, site, standing } = await built();
  const before = treeOf(site);
  const failing = swapIn(
    site,
    async (beside, otherwise) => {
      fill(beside, { "a/index.html": "2" });
      otherwise.update([]);
      throw new Error("the disk is full");
    },
    standing,
  );
  await expect(failing).rejects.toThrow("the disk is full");
  await swapIn(
    site,
    async (beside, otherwise) => {
      fill(beside, { "a/index.html": "2" });
      otherwise.leave();
    },
    standing,
  );
  expect(treeOf(site)).toEqual(before);
  expect(readdirSync(folder)).toEqual(["site"]);
});

test("a change that was killed halfway is finished by the next build, even one that finds faults", async () => {
  const { folder, site } = await built();
  // As it is left where the first of two files is in place already.
  fill(`${site}.changes`, { "b/d/index.html": "2", "built-by-benchwright.gone.json": '["b/c/index.html"]' });
  fill(site, { "a/index.html": "2" });
  await swapIn(site, async (_, otherwise) => otherwise.leave());
  expect(withoutMarker(site)).toEqual(["a", "a/index.html", "b", "b/d", "b/d/index.html", "index.html"]);
  expect(readdirSync(folder)).toEqual(["site"]);
});

test("changes that are not whole, or whose site is gone, are dropped", async () => {
  const { folder, site } = await built();
  const before = treeOf(site);
  fill(`${site}.changes`, { "a/index.html": "2" });
  finishUpdate(site);
  expect(treeOf(site)).toEqual(before);
  renameSync(site, join(folder, "elsewhere"));
  fill(`${site}.changes`, { "built-by-benchwright.gone.json": "[]" });
  finishUpdate(site);
  expect(readdirSync(folder)).toEqual(["elsewhere"]);
});

test("a site that somebody else put there is not taken for the one that stood", async () => {
  const { site, standing } = await built();
  expect(stillStands(site, standing)).toBe(true);
  expect(stillStands(`${site}2`, standing)).toBe(false);
  renameSync(site, `${site}3`);
  expect(stillStands(site, standing)).toBe(false);
  renameSync(writeFolder(new Map([["index.html", "foreign"]])), site);
  expect(stillStands(site, standing)).toBe(false);
  expect(existsSync(join(site, "index.html"))).toBe(true);
});
