/** `check --watch` tells what has changed, and only that. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { changesBetween, changesText } from "../../src/report/changes.ts";
import { callCommand } from "../support/call-command.ts";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";

const fault = (message: string, line = 1, more: Partial<Diagnostic> = {}): Diagnostic => ({
  ...{ code: "unknown-target", severity: "error", file: "a.md", line, column: 1, message },
  other: undefined,
  ...more,
});

describe("what has changed between two checks", () => {
  test("a fault that only moved to another line is the same one", () => {
    expect(changesBetween([fault("A.", 3)], [fault("A.", 9)])).toEqual({
      mended: [],
      waiting: [],
      fresh: [],
    });
  });

  test("of three that are alike, one mended leaves two", () => {
    const three = [fault("A.", 1), fault("A.", 2), fault("A.", 3)];
    expect(changesBetween(three, three.slice(1)).mended).toHaveLength(1);
    expect(changesBetween(three.slice(1), three).fresh).toHaveLength(1);
  });

  test("a fault that can't be looked at for another one is not called mended", () => {
    const broken = fault("YAML.", 1, { code: "front-matter-yaml", holdsUp: true });
    const other = fault("C.", 1, { file: "b.md" });
    const changes = changesBetween([fault("A."), other], [broken]);
    expect(changes).toEqual({ mended: [other], waiting: [fault("A.")], fresh: [broken] });
    const text = changesText(changes, [broken], new Map(), (word) => word);
    expect(text).toContain("not looked at again yet: a.md");
    expect(text).toContain("1 mended, 1 new; still 1 error, 0 warnings\nSome checks wait");
  });

  test("nothing changed, nothing said", () => {
    expect(changesText(changesBetween([], []), [], new Map(), (word) => word)).toBe("");
  });
});

test.each(["--json", "--counts"])("refuses %s, in words", async (option) => {
  const { code, out, err } = await callCommand(
    "check",
    "--watch",
    option,
    "--content",
    writeFolder(soundFiles),
  );
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain("--watch");
});

test("a folder that is not there can't be watched", async () => {
  const { code, err } = await callCommand("check", "--watch", "--content", join(temporaryFolder(), "none"));
  expect(code).toBe(2);
  expect(err).toContain("There is no folder");
});

test("tells a new fault, then that it is mended, and ends with 0 on Ctrl+C", {
  timeout: 90_000,
}, async () => {
  const content = writeFolder(soundFiles);
  const module = join(content, "modules/box/module.md");
  const sound = readFileSync(module, "utf8");
  let out = "";
  let stop: () => void = () => undefined;
  const ended = runTool(["check", "--watch", "--content", content], {
    cwd: temporaryFolder(),
    timeout: 80_000,
    started: ({ kill }) => {
      stop = () => kill("SIGINT");
    },
    heard: (_, text) => {
      out += text;
    },
  });
  const within = { timeout: 30_000, interval: 50 };
  await expect.poll(() => out, within).toContain("0 errors, 0 warnings\n\nWatching ");
  out = "";
  writeFileSync(module, sound.replace("remove: wheel", "remove: whel"));
  await expect
    .poll(() => out, within)
    .toMatch(/^\n\d\d:\d\d:\d\d\n[\s\S]*unknown-target[\s\S]*0 mended, \d+ new; still [1-9]/);
  out = "";
  writeFileSync(module, sound);
  await expect
    .poll(() => out, within)
    .toMatch(/mended: modules\/box\/module\.md[\s\S]* 0 new; still 0 errors, 0 warnings\n$/);
  stop();
  expect((await ended).code).toBe(0);
});
