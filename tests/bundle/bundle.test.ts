import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { find } from "../../src/browser/search/find.ts";
import { loadIndex } from "../../src/browser/search/load-index.ts";
import { type BundleOptions, bundleAssets, entries } from "../../src/bundle/bundle.ts";
import { type KeptSearch, writeSearch } from "../../src/bundle/search.ts";
import type { SearchGlobal } from "../../src/model/search-data.ts";
import type { Assets, SearchDocument } from "../../src/model/site.ts";
import { projectDir } from "../support/project.ts";

const documents: SearchDocument[] = [
  { address: { kind: "module", id: "motor" }, title: "Spring motor", heading: "", terms: ["4 BA"] },
  {
    address: { kind: "module", id: "motor", at: "let-down" },
    title: "Spring motor",
    heading: "Let it down",
    terms: [],
  },
  {
    address: { kind: "tool", id: "key" },
    title: "A key for </script> 'quotes' \\ and \u2028",
    heading: "",
    terms: [],
  },
];

let outDir = "";
let assets: Assets;
let index = "";
const options = (): BundleOptions => ({
  outDir,
  layoutsDir: join(projectDir, "layouts"),
  browserDir: join(projectDir, "src/browser"),
  minify: true,
});

beforeAll(async () => {
  outDir = await mkdtemp(join(tmpdir(), "bundle-"));
  assets = await bundleAssets(options());
  index = await writeSearch(documents, outDir);
});
afterAll(() => rm(outDir, { recursive: true }));

const text = (file: string) => readFile(join(outDir, file), "utf8");

test("there is a script for each entry", () => {
  expect([...assets.scripts.keys()].sort()).toEqual([...entries].sort());
});

test("names bear a fingerprint and stand below assets/", () => {
  for (const file of [assets.style, assets.furtherStyle, ...assets.scripts.values(), index])
    expect(file).toMatch(/^assets\/[a-z-]+-[0-9A-Z]{8}\.(js|css)$/);
});

describe("every script", () => {
  test.each([...entries, "search-index"])(
    "%s is a classic one: it compiles as such and loads no other",
    async (entry) => {
      const code = await text(assets.scripts.get(entry) ?? index);
      expect(() => new Function(code)).not.toThrow();
      expect(code).not.toMatch(/\bimport\s*\(/);
    },
  );
});

test("the style sheet names only files that are there", async () => {
  const names = [...(await text(assets.style)).matchAll(/url\(["']?([^"')]+)["']?\)/g)].map(
    ([, name]) => name!,
  );
  const files = names.filter((name) => !/^(data:|#)/.test(name));
  expect(files.length).toBeGreaterThan(0);
  const there = await readdir(join(outDir, "assets"));
  for (const file of files) expect(there).toContain(file.replace(/^\.\//, ""));
});

test("the same sources give the same names, another content another name", async () => {
  expect(await bundleAssets(options())).toEqual(assets);
  expect(await writeSearch(documents, outDir)).toBe(index);
  expect(await writeSearch(documents.slice(1), outDir)).not.toBe(index);
});

test("where only prose has changed, what was kept makes the same as all made anew", async () => {
  const kept: KeptSearch = {};
  await writeSearch(documents, outDir, kept);
  const more = documents.map((each) => ({ ...each, says: [...(each.says ?? []), "One more sentence."] }));
  const [anew, again] = [{}, kept].map(async (one: KeptSearch) => {
    const name = await writeSearch(more, outDir, one);
    return { name, last: one.last };
  });
  expect(await again).toEqual(await anew);
  expect((await again)!.name).not.toBe(index);
});

test("the index script hands over the data as it was, whatever stands in it", async () => {
  const page: SearchGlobal & { self?: object } = {};
  page.self = page;
  runInContext(await text(index), createContext(page));
  const data = page.benchwrightSearch!;
  expect(data.pages).toEqual([
    // "4 BA" stands on the page itself and at none of its headings.
    [
      "module",
      "modules/motor/index.html",
      "Spring motor",
      [
        ["Let it down", "let-down", []],
        ["", "", [0]],
      ],
      [],
    ],
    ["tool", "tools/key/index.html", documents[2]!.title, [], []],
  ]);
  expect(find(loadIndex(data.index), [["4ba"]]).map((found) => found.page)).toEqual([0]);
});

test("a script that can't be bundled is told with its file", async () => {
  const broken = await mkdtemp(join(tmpdir(), "broken-"));
  for (const entry of entries)
    await writeFile(join(broken, `${entry}.ts`), entry === "quiz" ? "let = ;" : "");
  await expect(bundleAssets({ ...options(), browserDir: broken })).rejects.toThrow(/quiz\.ts/);
  await rm(broken, { recursive: true });
});
