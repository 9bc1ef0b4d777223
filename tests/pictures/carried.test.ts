/** Of a photograph in several sizes one is carried along, and stands for the others where there is no network. */
import { expect, test } from "vitest";
import { sizeKept } from "../../src/browser/worker/picture-size.ts";
import { carried, carriedFiles, filesOf } from "../../src/model/picture-files.ts";

const site = (width: number): string[] => {
  const { main, sizes } = filesOf("m/a.jpg", { width, height: width });
  return ["index.html", ...[main, ...sizes].map(({ file }) => file)];
};

test.each([
  [4000, "m/a.jpg.960.webp"],
  [1000, "m/a.jpg.960.webp"],
  [960, "m/a.jpg.960.webp"],
  [700, "m/a.jpg.700.webp"],
  [481, "m/a.jpg.481.webp"],
  [480, "m/a.jpg"],
])("of one %i px wide: %s", (width, file) => {
  const kept = carriedFiles(site(width));
  expect([...kept]).toEqual(["index.html", file]);
  expect(carried(filesOf("m/a.jpg", { width, height: width })).file).toBe(file);
  const edition = new Map([...kept].map((path) => [path, path]));
  for (const asked of site(width).slice(1))
    if (asked !== file) expect(sizeKept(asked, edition), asked).toBe(file);
});

test("files whose names only look like sizes are files of their own", () => {
  const files = ["m/a.jpg.480.webp", "m/b.svg", "m/b.svg.480.webp", "m/c.webp"];
  expect([...carriedFiles(files)]).toEqual(files);
  expect(sizeKept("m/d.jpg", new Map(files.map((file) => [file, 0])))).toBeUndefined();
});
