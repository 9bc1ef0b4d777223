/** `check --counts`: the figures of `order --count`, a line for each module. */
import { expect, test } from "vitest";
import { callCommand as call } from "../support/call-command.ts";
import { changed, soundFiles, writeFolder } from "../support/content-folder.ts";

test("a line for each module, with the figures of order --count", async () => {
  const { code, out } = await call("check", "--counts", "--content", writeFolder(soundFiles));
  expect(code).toBe(0);
  // Only lid-off and brake-off are free of one another, in front of a chain of five: 2 orders of 7! = 5,040.
  expect(out.split("\n").map((line) => line.split(/ {2,}/))).toEqual([
    ["0 errors, 0 warnings"],
    [""],
    ["module", "steps", "width", "height", "right orders", "chance"],
    ["box", "7", "2", "6", "2", "1 in 2,520"],
    [""],
  ]);
});

test("a module with errors has no figures", async () => {
  const files = changed("modules/box/module.md", "remove: wheel", "remove: whel");
  const { code, out } = await call("check", "--counts", "--content", writeFolder(files));
  expect([code, out.trim()]).toEqual([1, "module  steps  width  height  right orders  chance"]);
});

test("the figures are for people", async () => {
  expect(await call("check", "--counts", "--json", "--content", writeFolder(soundFiles))).toMatchObject({
    code: 2,
    out: "",
    err: expect.stringContaining("order --module ID --count --json"),
  });
});
