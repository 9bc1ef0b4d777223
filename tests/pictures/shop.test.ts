/** Pictures are made once, kept, and never waited for by a site that is being written. */
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { buildWith } from "../../src/build.ts";
import { crewOf } from "../../src/crew/crew.ts";
import { here } from "../../src/crew/thread.ts";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { LaterShop } from "../../src/pictures/later-shop.ts";
import * as making from "../../src/pictures/make.ts";
import { pooled } from "../../src/pictures/pool.ts";
import { PictureShop } from "../../src/pictures/shop.ts";
import { type Files, soundFiles, temporaryFolder, withFile, writeFolder } from "../support/content-folder.ts";
import { treeOf } from "../support/tree.ts";
import { photograph } from "./photograph.ts";

const made = vi.spyOn(making, "makePicture");

const stamps = (contentDir: string, files: readonly string[]): Map<string, string> =>
  new Map(files.map((file) => [file, readFileSync(join(contentDir, file)).length.toString()]));

test("a second build makes none anew, and gives the same bytes; a changed picture is made, and a spoilt entry too", async () => {
  const photo = await photograph("jpeg", { width: 600, height: 400 });
  const contentDir = writeFolder(
    new Map([
      ["a.jpg", photo],
      ["b.png", await photograph("png", { width: 40, height: 40 })],
    ]),
  );
  const cacheDir = join(temporaryFolder(), "pictures");
  const pictures = stamps(contentDir, ["a.jpg", "b.png"]);
  const once = async (): Promise<[number, Map<string, string>]> => {
    made.mockClear();
    const outDir = temporaryFolder();
    const { diagnostics } = await new PictureShop({ contentDir, cacheDir }).put(pictures, outDir, false);
    expect(diagnostics).toEqual([]);
    return [made.mock.calls.length, treeOf(outDir)];
  };
  const [first, tree] = await once();
  expect([first, [...tree.keys()]]).toEqual([2, ["/a.jpg", "/a.jpg.480.webp", "/a.jpg.600.webp", "/b.png"]]);
  expect(await once()).toEqual([0, tree]);
  for (const name of readdirSync(cacheDir)) appendFileSync(join(cacheDir, name, "0"), "x");
  expect(await once()).toEqual([2, tree]);
  writeFileSync(join(contentDir, "b.png"), await photograph("png", { width: 41, height: 40 }));
  expect((await once())[0]).toBe(1);
});

test("without a cache all is made, and a picture that is cut off is told with its name", async () => {
  const photo = await photograph("jpeg", { width: 600, height: 400 });
  const contentDir = writeFolder(
    new Map([
      ["a.jpg", photo.subarray(0, photo.length - 300)],
      ["b.jpg", photo],
    ]),
  );
  const outDir = temporaryFolder();
  const shop = new PictureShop({ contentDir, cacheDir: undefined });
  const { diagnostics } = await shop.put(stamps(contentDir, ["a.jpg", "b.jpg"]), outDir, false);
  expect(diagnostics).toMatchObject([{ code: "picture-broken", severity: "error", file: "a.jpg", line: 1 }]);
  expect(existsSync(join(outDir, "b.jpg.480.webp"))).toBe(true);
});

test("a picture that can't be opened is told", async () => {
  const looked = await new PictureShop({ contentDir: temporaryFolder(), cacheDir: undefined }).look(
    new Map([["a.jpg", ""]]),
  );
  expect(looked.diagnostics).toMatchObject([{ code: "unreadable", file: "a.jpg" }]);
});

/** The sound programme with photographs that nothing shows. */
async function album(count: number): Promise<Files> {
  let files = soundFiles;
  const numbers = Array.from({ length: count }, (_, number) => number);
  for (const number of numbers)
    files = withFile(
      `modules/box/figures/p${number}.jpg`,
      await photograph("jpeg", { width: 500 + number, height: 40 }),
      files,
    );
  return files;
}

const build = (contentDir: string, siteDir: string, pictures: PictureShop) => {
  const crew = crewOf(1, (share) => here({ contentDir, share }));
  return () => buildWith(crew, { contentDir, siteDir, cacheDir: undefined, pictures, offline: false });
};

test("a served site stands before its fifty photographs are made; what a page asks for is made first, and all come", async () => {
  const contentDir = writeFolder(await album(50));
  const folder = temporaryFolder();
  const siteDir = join(folder, "site");
  const shop = new LaterShop({ contentDir, cacheDir: join(folder, "kept") });
  const again = build(contentDir, siteDir, shop);
  made.mockClear();
  await again();
  expect(made).not.toHaveBeenCalled();
  expect(existsSync(join(siteDir, "modules/box/index.html"))).toBe(true);
  const faults: Diagnostic[] = [];
  shop.begin(siteDir, (fault) => faults.push(fault));
  await shop.waitFor("modules/box/figures/p49.jpg.480.webp");
  expect(existsSync(join(siteDir, "modules/box/figures/p49.jpg.480.webp"))).toBe(true);
  expect(made.mock.calls.length).toBeLessThan(40);
  await Promise.all(
    Array.from({ length: 50 }, (_, number) => shop.waitFor(`modules/box/figures/p${number}.jpg`)),
  );
  expect(faults).toEqual([]);
  const whole = temporaryFolder();
  await build(contentDir, join(whole, "site"), new PictureShop({ contentDir, cacheDir: undefined }))();
  expect(treeOf(siteDir)).toEqual(treeOf(join(whole, "site")));
});

test("after a change of a module its pictures stay; a changed picture is made, and one that is taken away goes", async () => {
  const contentDir = writeFolder(await album(3));
  const folder = temporaryFolder();
  const siteDir = join(folder, "site");
  const shop = new LaterShop({ contentDir, cacheDir: join(folder, "kept") });
  const again = build(contentDir, siteDir, shop);
  const figures = "modules/box/figures";
  const comes = async (files: readonly string[]) => {
    shop.begin(siteDir, (fault) => expect.fail(fault.message));
    for (const file of files) await shop.waitFor(`${figures}/${file}`);
  };
  await again();
  await comes(["box.svg", "p0.jpg", "p1.jpg", "p2.jpg"]);
  const before = treeOf(join(siteDir, figures));
  appendFileSync(join(contentDir, "modules/box/module.md"), "\nMore.\n");
  made.mockClear();
  await again();
  await comes([]);
  expect(made).not.toHaveBeenCalled();
  expect(treeOf(join(siteDir, figures))).toEqual(before);
  writeFileSync(join(contentDir, figures, "p1.jpg"), await photograph("jpeg", { width: 700, height: 50 }));
  await again();
  await comes(["p1.jpg"]);
  expect(readdirSync(join(siteDir, figures)).filter((name) => name.startsWith("p1."))).toEqual([
    "p1.jpg",
    "p1.jpg.480.webp",
    "p1.jpg.700.webp",
  ]);
});

test("faults of a picture that is made later are told when it is", async () => {
  const photo = await photograph("jpeg", { width: 600, height: 400 });
  const contentDir = writeFolder(
    withFile("modules/box/figures/p.jpg", photo.subarray(0, photo.length - 300)),
  );
  const folder = temporaryFolder();
  const shop = new LaterShop({ contentDir, cacheDir: join(folder, "kept") });
  mkdirSync(join(folder, "site"));
  await build(contentDir, join(folder, "site"), shop)();
  const faults: Diagnostic[] = [];
  shop.begin(join(folder, "site"), (fault) => faults.push(fault));
  await shop.waitFor("modules/box/figures/p.jpg");
  expect(faults).toMatchObject([{ code: "picture-broken", file: "modules/box/figures/p.jpg" }]);
});

test("so many hands work at once and no more, and all end before a failure is told", async () => {
  let [now, most, ended] = [0, 0, 0];
  const work = async (item: number): Promise<number> => {
    most = Math.max(most, ++now);
    await Promise.resolve();
    now--;
    ended++;
    if (item === 3) throw new Error("three");
    return item * 2;
  };
  expect(await pooled([1, 2, 4, 5], 2, work)).toEqual([2, 4, 8, 10]);
  expect(most).toBe(2);
  await expect(pooled([3, 1, 2, 4], 2, work)).rejects.toThrow("three");
  expect(ended).toBe(8);
});
