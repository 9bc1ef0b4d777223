/** What is right at the bench, and was once complained of: no fault and no warning. */
import { expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { changed, type Files, writeFolder } from "../support/content-folder.ts";

const module = "modules/box/module.md";

const cases: readonly (readonly [string, Files])[] = [
  [
    "a set of bits fits several drives",
    changed("tools/driver.md", "drive: slotted", "drive: [hexagon socket, slotted]"),
  ],
];

test.each(cases)("%s", (_, files) => {
  const { reading, diagnostics } = read(writeFolder(files));
  expect([...diagnostics, ...validate(reading).diagnostics]).toEqual([]);
});
