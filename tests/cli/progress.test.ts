/** How far a build is: told on a terminal, in one line that is gone at the end. */
import { join } from "node:path";
import { expect, test } from "vitest";
import { buildSite } from "../../src/build.ts";
import { progressOn } from "../../src/cli/progress.ts";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";

const clear = "\r\u001b[2K";

async function builtOn(isTTY: boolean): Promise<string> {
  let written = "";
  const progress = progressOn({
    ...{ isTTY, columns: 40 },
    write: (text) => {
      written += text;
    },
  });
  const folders = { contentDir: writeFolder(soundFiles), siteDir: join(temporaryFolder(), "site") };
  await buildSite({ ...folders, cacheDir: undefined, tell: progress.tell });
  progress.end();
  return written;
}

test("on a terminal each stage writes over the one before, and the line is empty at the end", {
  timeout: 60_000,
}, async () => {
  expect(await builtOn(true)).toBe(
    `${clear}Reading …${clear}Checking 1 module …${clear}Writing 1 module …${clear}`,
  );
});

test("elsewhere nothing is written", { timeout: 60_000 }, async () => {
  expect(await builtOn(false)).toBe("");
});

test("a line longer than the terminal is cut, so that it stays one line", () => {
  let written = "";
  const write = (text: string) => {
    written += text;
  };
  progressOn({ isTTY: true, columns: 12, write }).tell("checking", 1000);
  expect(written).toBe(`${clear}Checking 1,`);
});

test("a build whose output is piped has no line of progress", { timeout: 60_000 }, async () => {
  const site = join(temporaryFolder(), "site");
  const { stderr, code } = await runTool(["build", "--content", writeFolder(soundFiles), "--to", site], {
    cwd: temporaryFolder(),
  });
  expect({ stderr, code }).toEqual({ stderr: "", code: 0 });
});
