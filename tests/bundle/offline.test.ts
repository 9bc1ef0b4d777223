/** The list of an edition, the worker that carries its digest, and the manifest with its icons. */
import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, expect, test } from "vitest";
import { colourIn, manifestOf, writeManifest } from "../../src/bundle/manifest.ts";
import { editionText, listFiles, writeOffline } from "../../src/bundle/offline.ts";
import type { Programme } from "../../src/model/programme.ts";
import { projectDir } from "../support/project.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "benchwright-list-"));
  mkdirSync(join(folder, "a b"), { recursive: true });
  writeFileSync(join(folder, "index.html"), "abc");
  writeFileSync(join(folder, "a b", "é.html"), "");
  writeFileSync(join(folder, ".hidden"), "x");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

// FIPS 180-4's own example: SHA-256("abc") = ba7816bf 8f01cfea 414140de 5dae2223 …; and that of the empty text.
const ofAbc = Buffer.from("ba7816bf8f01cfea414140de5dae2223", "hex").toString("base64url");
const ofNothing = Buffer.from("e3b0c44298fc1c149afbf4c8996fb924", "hex").toString("base64url");

test("every file that is not hidden is listed by path, with the digest and size of its bytes", async () => {
  expect(await listFiles(folder)).toEqual([
    ["a b/é.html", ofNothing, 0],
    ["index.html", ofAbc, 3],
  ]);
});

test("the same files give the same edition, a changed one another", async () => {
  const before = editionText(await listFiles(folder));
  expect(editionText(await listFiles(folder))).toBe(before);
  writeFileSync(join(folder, "index.html"), "abd");
  expect(editionText(await listFiles(folder))).not.toBe(before);
});

test("the worker names the list by the digest of its text, and both are not in it", async () => {
  await writeOffline({ outDir: folder, browserDir: join(projectDir, "src/browser") });
  const version = /^self\.benchwrightEdition="([\w-]{22})";\n/.exec(
    readFileSync(join(folder, "worker.js"), "utf8"),
  )?.[1];
  const text = readFileSync(join(folder, `offline-${version}.json`), "utf8");
  expect(createHash("sha256").update(text).digest().subarray(0, 16).toString("base64url")).toBe(version);
  const { files } = JSON.parse(text) as { files: [string][] };
  expect(files.map(([path]) => path)).toEqual(["a b/é.html", "index.html"]);
});

const programme = { name: "A workshop", language: "en" } as Programme;

test("the manifest works below any path and names icons that are there, in their sizes", async () => {
  await writeManifest({ outDir: folder, layoutsDir: join(projectDir, "layouts"), programme });
  const manifest = JSON.parse(readFileSync(join(folder, "manifest.webmanifest"), "utf8"));
  expect(manifest).toMatchObject({ name: "A workshop", start_url: "./index.html", scope: "./" });
  const icons = (manifest.icons as { src: string; sizes: string; purpose: string }[]).slice(1);
  expect(icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual([
    "192x192 any",
    "512x512 any",
    "512x512 maskable",
  ]);
  expect(readdirSync(join(folder, "assets")).length).toBe(icons.length);
  for (const { src, sizes } of icons) {
    const { width, height, format } = await sharp(join(folder, src)).metadata();
    expect(`${width}x${height} ${format}`).toBe(`${sizes} png`);
  }
});

test("colours come from the tokens; a token that is missing is told", () => {
  expect(colourIn(":root { --paper: #f7f2e7; }", "paper")).toBe("#f7f2e7");
  expect(() => colourIn(":root {}", "paper")).toThrow("--paper");
  expect(manifestOf(programme, "#123456")).toMatchObject({
    theme_color: "#123456",
    background_color: "#123456",
  });
});
