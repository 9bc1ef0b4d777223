/** The whole site of the fixture, as files. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { HtmlValidate } from "html-validate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { PictureShop } from "../../src/pictures/shop.ts";
import { renderModules, renderProgramme } from "../../src/render/render.ts";
import { millSite } from "./fixture.ts";

const assets = { style: "assets/main.css", furtherStyle: "assets/further.css", scripts: new Map() };
let outDir: string;
let pages: Map<string, string>;

beforeAll(async () => {
  const { site, contentDir } = millSite();
  outDir = mkdtempSync(join(tmpdir(), "benchwright-"));
  const shop = new PictureShop({ contentDir, cacheDir: undefined });
  const { sizes } = await shop.look(site.pictures);
  await shop.put(site.pictures, outDir, false);
  const { pages: ofModules } = await renderModules(site, assets, sizes, outDir);
  const count = ofModules + (await renderProgramme(site, assets, sizes, outDir));
  const files = readdirSync(outDir, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".html"),
  );
  pages = new Map(
    files.map((file) => [file.replaceAll("\\", "/"), readFileSync(join(outDir, file), "utf8")]),
  );
  expect(count).toBe(pages.size);
});

afterAll(() => rmSync(outDir, { recursive: true, force: true }));

const mill = () => pages.get("modules/mill/index.html")!;
const idsOf = (page: string) => [...page.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]!);
/** A step with all that belongs to it, from its own id to the next step's. */
const stepOf = (id: string) =>
  mill()
    .split('<section class="step"')
    .find((part) => part.startsWith(` id="${id}"`))!;

test("every page, picture and pictogram is written", () => {
  expect([...pages.keys()].sort()).toEqual(
    [
      "about",
      "hazards",
      "hazards/pinch",
      "hazards/vapour",
      "modules",
      "modules/mill",
      "modules/mill/bench",
      "modules/mill/order",
      "modules/mill/dry-run",
      "modules/mill/practice",
      "modules/mill/paper",
      "faults",
      "poster",
      "route",
      "search",
      "sums",
      "sums/formulas",
      "sums/threads",
      "substances",
      "substances/spirit",
      "tools",
      "tools/driver",
    ]
      .map((page) => `${page}/index.html`)
      .concat("index.html")
      .sort(),
  );
  const files = ["modules/mill/figures/mill.svg", "assets/icon.svg", "assets/ghs02.svg", "assets/ghs08.svg"];
  expect(files.filter((file) => !existsSync(join(outDir, file)))).toEqual([]);
});

test("every link leads to a file, and to an element that is there", () => {
  let followed = 0;
  for (const [file, page] of pages) {
    for (const [, address] of page.matchAll(/(?:href|src)="([^"]*)"/g)) {
      if (/^(https:|data:)/.test(address!) || /^(?:\.\.\/)*assets\/(?:main|further)\.css$/.test(address!))
        continue;
      const [path = "", at] = address!.split("#");
      const target =
        path === "" ? file : relative(outDir, resolve(outDir, dirname(file), path)).replaceAll("\\", "/");
      expect(existsSync(join(outDir, target)), `${file} → ${address}`).toBe(true);
      if (at !== undefined) expect(idsOf(pages.get(target)!), `${file} → ${address}`).toContain(at);
      followed++;
    }
  }
  expect(followed).toBeGreaterThan(100);
});

test("ids stand once on a page, steps have their own", () => {
  for (const [file, page] of pages) expect(new Set(idsOf(page)).size, file).toBe(idsOf(page).length);
  expect(idsOf(mill())).toEqual(
    expect.arrayContaining(["main", "guard-off", "constructor", "felt-on", "a-note", "afterwards"]),
  );
});

test("nothing written into a page runs or styles it, and no request leaves the site", () => {
  for (const [file, page] of pages) {
    expect(page, file).toContain("default-src 'none'");
    expect(page, file).not.toMatch(
      /<script(?![^>]*(?:src=|type="application\/json"))|<style|\sstyle=|\son\w+=/,
    );
    expect(page, file).not.toMatch(/(?:src|<link[^>]*href)="(?:https?:)?\/\//);
  }
});

test("what the author wrote is text", () => {
  expect(mill()).toContain("<h1>Strip &lt;b&gt;the&lt;/b&gt; mill</h1>");
  expect(stepOf("constructor")).toContain("Because &lt;i&gt;I&lt;/i&gt; say so.");
  for (const page of pages.values()) expect(page).toContain("Mill &amp; &lt;club&gt;");
});

test("safety messages stand before the work of their step, the gravest first", () => {
  const step = stepOf("constructor");
  const places = ["Danger</b>", "Warning</b>", "<dt>Substance</dt>", "<dt>Remove</dt>"].map((text) =>
    step.indexOf(text),
  );
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test("a hazard stands in full at the front; a step says how to avoid it, the first also what comes of it", () => {
  expect(mill()).toMatch(
    /id="s_hazard-pinch">[^§]*?You are hurt\.<\/strong><\/p>\n<ul><li>Keep away\.<\/li>/,
  );
  const inShort = 'Keep away. <a href="#s_hazard-pinch">More at the front</a>';
  expect(stepOf("main")).toContain(`<strong>You are hurt.</strong> ${inShort}`);
  expect(stepOf("constructor")).toContain(`<p>${inShort}`);
});

test("seen one at a time, each step has its hazards in full", () => {
  const bench = pages.get("modules/mill/bench/index.html")!;
  const [, ...steps] = bench.split('<section class="step"');
  expect(steps[0]).toContain("<li>Keep away.</li>");
  expect(steps.find((step) => step.startsWith(' id="constructor"'))).toContain("<li>Keep away.</li>");
});

test("what is noted at one step is printed again at the other", () => {
  expect(stepOf("guard-off")).toContain("Turns of each screw");
  expect(stepOf("guard-on")).toMatch(/Step <a href="#guard-off">2<\/a>: turns of each screw/);
});

test("a condition names the steps that wait for it, and they name it", () => {
  expect(mill()).toMatch(/No step <a href="#guard-off">2<\/a> until it is known/);
  expect(stepOf("guard-off")).toMatch(/Not while <a href="#s_conditions">unknown<\/a>: Lead paint/);
});

test("a sheet says which steps use it; a statement without known words is its code", () => {
  const sheet = pages.get("substances/spirit/index.html")!;
  expect(sheet).toContain('href="../../modules/mill/index.html#constructor"');
  expect(sheet).toContain("<dd>H226 Flammable liquid and vapour</dd><dd>H999</dd>");
  expect(sheet).toContain('alt="GHS08, health hazard"');
});

test("the pages are valid HTML", async () => {
  const validator = new HtmlValidate({ extends: ["html-validate:recommended"] });
  for (const [file, page] of pages) {
    const report = await validator.validateString(page);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ line, message }) => `${file}:${line} ${message}`),
      ),
    ).toEqual([]);
  }
});
