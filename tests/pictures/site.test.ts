/** Whatever way a picture gets into a site, nothing but the picture does. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
import { changed, type Files, withFile, writeFolder } from "../support/content-folder.ts";
import { photograph, tracesIn, withText } from "./photograph.ts";

const box = "modules/box";

/** Photographs in the prose of a module, at a step, in a quiz, in a sheet, and one that nothing shows. */
async function withPhotographs(): Promise<Files> {
  const [jpeg, png, webp] = await Promise.all([
    photograph("jpeg", { width: 2000, height: 1500, orientation: 6 }),
    photograph("png"),
    photograph("webp", { width: 300, height: 200 }),
  ]);
  const embedded = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><!-- secret words --><image width="9" height="9" href="data:image/webp;base64,${webp.toString("base64")}"/></svg>`;
  let files: Files = changed(
    `${box}/module.md`,
    "(figures/box.svg)",
    "(figures/box.svg) ![A lid](figures/lid.jpg)",
  );
  files = changed(
    `${box}/module.md`,
    "id: clean\n",
    "id: clean\nfigure: {file: figures/wheel.png, alt: A wheel}\n",
    files,
  );
  files = changed(
    `${box}/quiz.yaml`,
    "figure: {file: figures/box.svg,",
    "figure: {file: figures/lid.jpg,",
    files,
  );
  files = changed("tools/driver.md", "Prose.", "![A driver](driver.webp)", files);
  for (const [path, bytes] of [
    [`${box}/figures/lid.jpg`, jpeg],
    [`${box}/figures/wheel.png`, withText(png, "secret words")],
    [`${box}/figures/spare.JPEG`, jpeg],
    [`${box}/figures/box.svg`, embedded],
    ["tools/driver.webp", webp],
  ] as const)
    files = withFile(path, bytes, files);
  return files;
}

const folder = mkdtempSync(join(tmpdir(), "benchwright-pictures-"));
const [content, site] = [join(folder, "content"), join(folder, "site")];
let said = "";
const say = (text: string): void => {
  said += text;
};
const output = { out: say, err: say };

beforeAll(async () => {
  cpSync(writeFolder(await withPhotographs()), content, { recursive: true });
  expect(await run(["build", "--fresh", "--content", content, "--to", site], output), said).toBe(0);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every file of the site, by path. */
const filesOfSite = (): string[] =>
  readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1));

test("no file of the site holds what a telephone writes into its photographs", () => {
  const files = filesOfSite();
  const pictures = files.filter((file) => /figures|driver\.webp/.test(file));
  expect(pictures.length).toBeGreaterThan(12);
  for (const file of files) expect(tracesIn(readFileSync(join(site, file))), file).toEqual([]);
});

test("nor does a module in one file, which holds each photograph once", async () => {
  const file = join(folder, "box.html");
  expect(
    await run(["build", "--fresh", "--content", content, "--single", "box", "--to", file], output),
    said,
  ).toBe(0);
  const text = readFileSync(file, "utf8");
  const embedded = [...text.matchAll(/<img src="data:image\/([a-z+]+);base64,([^"]+)"/g)];
  expect(embedded.map(([, kind]) => kind)).toEqual(expect.arrayContaining(["webp", "svg+xml"]));
  for (const [, , base64] of embedded) expect(tracesIn(Buffer.from(base64!, "base64"))).toEqual([]);
  expect(text).not.toMatch(/srcset|<source/);
});

test("pages name each width with its file, and keep room for the picture as it stands upright", () => {
  const page = readFileSync(join(site, box, "index.html"), "utf8");
  const source =
    /<source type="image\/webp" srcset="([^"]+)" sizes="[^"]+"><img src="([^"]+)" alt="A lid" width="(\d+)" height="(\d+)" loading="lazy" decoding="async">/.exec(
      page,
    )!;
  expect(source[1]!.split(", ")).toEqual(
    [480, 960, 1500].map((width) => `../../${box}/figures/lid.jpg.${width}.webp ${width}w`),
  );
  expect(source.slice(2)).toEqual([`../../${box}/figures/lid.jpg`, "1500", "2000"]);
  const quiz = readFileSync(join(site, box, "quiz/index.html"), "utf8");
  expect(quiz).toContain(
    `<div class="pointing"><picture><source type="image/webp" srcset="../../../${box}/figures/lid.jpg.480.webp 480w`,
  );
});

test("a device keeps one size of each photograph", () => {
  const list = filesOfSite().find((file) => /^offline-/.test(file))!;
  const { files } = JSON.parse(readFileSync(join(site, list), "utf8")) as { files: [string][] };
  expect(files.map(([path]) => path).filter((path) => /\/figures\/|tools\/driver\.webp/.test(path))).toEqual([
    `${box}/figures/box.svg`,
    `${box}/figures/lid.jpg.960.webp`,
    `${box}/figures/spare.JPEG.960.webp`,
    `${box}/figures/wheel.png.960.webp`,
    "tools/driver.webp",
  ]);
});
