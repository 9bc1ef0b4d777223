/** Lines and columns count from 1; columns in UTF-16 units, whatever the line ends and whatever stands before. */
import { expect, test } from "vitest";
import { placeAt } from "../../src/model/place.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { soundFiles, withFile, writeFolder } from "../support/content-folder.ts";

test.each([
  ["", 0, 1, 1],
  ["ab\ncd", 4, 2, 2],
  ["a\r\nb", 3, 2, 1],
  ["😀x", 2, 1, 3],
  ["ab", 99, 1, 3],
])("%j at %i is line %i, column %i", (text, offset, line, column) => {
  expect(placeAt("f", text, offset)).toEqual({ file: "f", line, column });
});

function faultIn(text: string) {
  const { reading, diagnostics } = read(writeFolder(withFile("tools/driver.md", text)));
  return [...diagnostics, ...validate(reading).diagnostics].find(({ file }) => file === "tools/driver.md");
}

test.each([
  ["plain", "---\ntitle: T\nsumary: S\nsummary: S\n---\n", 3],
  ["line ends of Windows", "---\r\ntitle: T\r\nsumary: S\r\nsummary: S\r\n---\r\n", 3],
  ["a byte order mark", "\ufeff---\ntitle: T\nsumary: S\nsummary: S\n---\n", 3],
  ["wide letters before", "---\ntitle: 😀\nsumary: S\nsummary: S\n---\n", 3],
])("a fault in front matter with %s", (_, text, line) => {
  expect(faultIn(text)).toMatchObject({ code: "unknown-field", line, column: 1 });
});

test("a fault in a step block stands at its place in the file", () => {
  const text = (soundFiles.get("modules/box/module.md") as string).replace("time: 5 min", "time:  5 mm");
  const { reading, diagnostics } = read(writeFolder(withFile("modules/box/module.md", text)));
  const found = [...diagnostics, ...validate(reading).diagnostics].find(({ code }) => code === "wrong-unit");
  const line = text.split("\n").findIndex((one) => one.startsWith("time:")) + 1;
  expect(found).toMatchObject({ line, column: 8 });
});
