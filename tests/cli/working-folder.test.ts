import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { generate } from "../bench/generate.ts";
import { temporaryFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";

/** Folders whose name begins the name of the folder that the pages are made in, letter for letter. */
test.each([
  ["the root", () => "/"],
  ["a folder whose name begins another's", (folder: string) => join(folder, "b")],
])("a site is built from %s", { timeout: 60_000 }, async (_, cwdIn) => {
  const folder = temporaryFolder();
  const cwd = cwdIn(folder);
  mkdirSync(cwd, { recursive: true });
  generate(join(folder, "content"), { modules: 3, seed: 1 });
  const site = join(folder, "site");
  const built = await runTool(
    ["build", "--fresh", "--content", join(folder, "content"), "--to", site],
    // The pages are made in a new folder here, named benchwright-…
    { cwd, env: { TMPDIR: folder } },
  );
  expect(built.stderr).not.toContain("fault of benchwright");
  expect(built.code).toBe(0);
  expect(existsSync(join(site, "modules/module-0001/index.html"))).toBe(true);
});
