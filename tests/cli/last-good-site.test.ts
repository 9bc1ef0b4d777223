import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { generate } from "../bench/generate.ts";
import { temporaryFolder } from "../support/content-folder.ts";
import { type Ended, type RunOptions, runTool } from "../support/run-command.ts";

/** Nothing comes from a cache, so that there is something to kill. */
const build = (content: string, site: string, options?: RunOptions): Promise<Ended> =>
  runTool(["build", "--fresh", "--content", content, "--to", site], options);

/** Every file of a site, with the digest of what is in it. */
function filesOf(site: string): ReadonlyMap<string, string> {
  const names = readdirSync(site, { recursive: true, encoding: "utf8" }).sort();
  const files = names.filter((name) => statSync(join(site, name)).isFile());
  return new Map(
    files.map((name) => [
      name,
      createHash("sha256")
        .update(readFileSync(join(site, name)))
        .digest("hex"),
    ]),
  );
}

/** Two programmes, so that the second one's site can be told from the first one's. */
function twoProgrammes(): { folder: string; first: string; second: string; site: string } {
  const folder = temporaryFolder();
  const [first, second] = [join(folder, "first"), join(folder, "second")];
  generate(first, { modules: 10, seed: 1 });
  generate(second, { modules: 20, seed: 2 });
  return { folder, first, second, site: join(folder, "out", "site") };
}

/** Builds, and kills the build so many milliseconds after it has begun to write beside the site. */
function killedWhileWriting(content: string, site: string, delay: number): Promise<Ended> {
  const earlier = new Set(foldersBeside(site));
  return build(content, site, {
    started({ kill }) {
      const watch = setInterval(() => {
        if (foldersBeside(site).every((name) => earlier.has(name))) return;
        clearInterval(watch);
        setTimeout(kill, delay, "SIGKILL");
      }, 5);
      setTimeout(clearInterval, 30_000, watch).unref();
    },
  });
}

/** Folders in which a site is being built, or was when the build was killed. */
const foldersBeside = (site: string): string[] =>
  readdirSync(join(site, "..")).filter((name) => name.startsWith("site.building-"));

test("a build that is killed leaves the last good site whole, and the next one clears up", {
  timeout: 120_000,
}, async () => {
  const { first, second, site } = twoProgrammes();
  expect((await build(first, site)).code).toBe(0);
  const good = filesOf(site);
  expect(good.size).toBeGreaterThan(50);

  const harmed: number[] = [];
  let midway = 0;
  for (const delay of [0, 30, 100, 250]) {
    const ended = await killedWhileWriting(second, site, delay);
    // A build that was done before it was killed has put its own site in place.
    if (ended.signal !== "SIGKILL") break;
    midway++;
    if (JSON.stringify([...filesOf(site)]) !== JSON.stringify([...good])) harmed.push(delay);
  }
  expect(harmed).toEqual([]);
  expect(midway, "kills that hit while the site was being written").toBeGreaterThan(0);

  expect((await build(second, site)).code).toBe(0);
  expect(existsSync(join(site, "modules/module-0019/index.html"))).toBe(true);
  expect(readdirSync(join(site, ".."))).toEqual(["site"]);
});

test("a build that fails leaves the last good site whole", { timeout: 120_000 }, async () => {
  const { first, site } = twoProgrammes();
  expect((await build(first, site)).code).toBe(0);
  const good = filesOf(site);
  const module = join(first, "modules/module-0003/module.md");
  writeFileSync(module, readFileSync(module, "utf8").replace("remove: [", "remove: [nothing-of-this-name, "));
  const failed = await build(first, site);
  expect(failed.code).toBe(1);
  expect(failed.stderr).toContain("modules/module-0003/module.md");
  expect(failed.stdout).toBe("");
  expect(filesOf(site)).toEqual(good);
  expect(readdirSync(join(site, ".."))).toEqual(["site"]);
});

test("a site that was left half swapped is made whole by the next build", { timeout: 120_000 }, async () => {
  const { folder, first, site } = twoProgrammes();
  expect((await build(first, site)).code).toBe(0);
  const good = filesOf(site);
  // What is left where the machine stops between the two renames of a swap.
  renameSync(site, `${site}.old`);
  mkdirSync(join(folder, "out", "site.building-999999999"));
  expect(existsSync(site)).toBe(false);
  expect((await build(first, site)).code).toBe(0);
  expect(filesOf(site)).toEqual(good);
  expect(readdirSync(join(folder, "out"))).toEqual(["site"]);
});
