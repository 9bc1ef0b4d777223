/** However many hands build a site, and however often, it is the site that one hand builds at one go. */
import { appendFileSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type BuildResult, buildWith } from "../../src/build.ts";
import { type Crew, crewOf } from "../../src/crew/crew.ts";
import { here } from "../../src/crew/thread.ts";
import { generate, moduleId } from "../bench/generate.ts";
import { soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";
import { treeOf } from "../support/tree.ts";

const hands = (count: number, contentDir: string): Crew =>
  crewOf(count, (share) => here({ contentDir, share }));

/** Builds afresh, one hand. */
async function fresh(contentDir: string, offline = false): Promise<Map<string, string>> {
  const siteDir = join(temporaryFolder(), "site");
  await buildWith(hands(1, contentDir), { contentDir, siteDir, cacheDir: undefined, offline });
  return treeOf(siteDir);
}

function programmeOf(modules: number): string {
  const folder = temporaryFolder();
  generate(folder, { modules, seed: 3 });
  return folder;
}

const moduleFile = (content: string, number: number) =>
  join(content, "modules", moduleId(number), "module.md");

function change(file: string, from: string | RegExp, to: string): void {
  const text = readFileSync(file, "utf8");
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`${file} has no ${from}`);
  writeFileSync(file, changed);
}

test("three hands give the bytes that one gives", async () => {
  const contentDir = programmeOf(12);
  const siteDir = join(temporaryFolder(), "site");
  await buildWith(hands(3, contentDir), { contentDir, siteDir, cacheDir: undefined });
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir, true));
});

test("three hands find the faults that one finds, each once, wherever they are", async () => {
  const contentDir = programmeOf(6);
  appendFileSync(
    moduleFile(contentDir, 0),
    "\n[nowhere](../module-9999/module.md) [no place](../module-0001/module.md#no)\n",
  );
  change(moduleFile(contentDir, 1), /^title: .*$/m, "titel: no title");
  appendFileSync(moduleFile(contentDir, 2), "\n[faulty itself](../module-0001/module.md)\n");
  writeFileSync(join(contentDir, "stray.txt"), "");
  const found = async (count: number): Promise<BuildResult["diagnostics"]> => {
    const siteDir = join(temporaryFolder(), "site");
    return (await buildWith(hands(count, contentDir), { contentDir, siteDir, cacheDir: undefined }))
      .diagnostics;
  };
  const one = await found(1);
  expect(one.map(({ code }) => code).sort()).toEqual(
    expect.arrayContaining(["dead-link", "dead-link", "missing-field", "stray-file", "unknown-field"]),
  );
  expect(await found(3)).toEqual(one);
});

test("threads give the bytes that one thread gives", { timeout: 240_000 }, async () => {
  const contentDir = programmeOf(102);
  const siteDir = join(temporaryFolder(), "site");
  const ended = await runTool(["build", "--fresh", "--content", contentDir, "--to", siteDir]);
  expect(ended).toMatchObject({ code: 0 });
  const [built, alone] = [treeOf(siteDir), await fresh(contentDir, true)];
  expect([...built.keys()]).toEqual([...alone.keys()]);
  expect([...built].filter(([file, bytes]) => alone.get(file) !== bytes).map(([file]) => file)).toEqual([]);
});

test("a crew that builds again makes what changed, takes the rest as it stands, and gives what a fresh build gives", {
  timeout: 120_000,
}, async () => {
  const contentDir = programmeOf(6);
  const siteDir = join(temporaryFolder(), "site");
  const crew = hands(2, contentDir);
  const build = () => buildWith(crew, { contentDir, siteDir, cacheDir: undefined, offline: false });
  const written = (number: number) =>
    statSync(join(siteDir, "modules", moduleId(number), "index.html")).mtimeMs;
  await build();
  const before = [0, 1, 2].map(written);

  appendFileSync(moduleFile(contentDir, 1), "\nOne more sentence.\n");
  await build();
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir));
  expect([0, 1, 2].map((number) => written(number) === before[number])).toEqual([true, false, true]);

  // What other pages say of a module changes with it.
  appendFileSync(moduleFile(contentDir, 2), `\n[the first](../${moduleId(0)}/module.md)\n`);
  change(moduleFile(contentDir, 2), /^revision: .*$/m, `revision: 1\nneeds: [${moduleId(0)}]`);
  await build();
  change(moduleFile(contentDir, 0), /^title: .*$/m, "title: Another title");
  await build();
  expect(readFileSync(join(siteDir, "modules", moduleId(2), "index.html"), "utf8")).toContain(
    "Another title",
  );
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir));

  // A page that somebody has touched is made anew, a module that is gone leaves nothing behind.
  writeFileSync(join(siteDir, "modules", moduleId(3), "index.html"), "touched");
  rmSync(join(contentDir, "modules", moduleId(5)), { recursive: true });
  await build();
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir));
});

test("a build that found faults is followed by a good one, and a sheet's change reaches the pages that show it", async () => {
  const contentDir = writeFolder(soundFiles);
  const siteDir = join(temporaryFolder(), "site");
  const crew = hands(1, contentDir);
  const build = () => buildWith(crew, { contentDir, siteDir, cacheDir: undefined, offline: false });
  await build();
  const file = join(contentDir, "modules/box/module.md");
  change(file, "title: Open the box", "titel: Open the box");
  expect((await build()).summary.pages).toBe(0);
  change(file, "titel: Open the box", "title: Open the chest");
  await build();
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir));
  change(join(contentDir, "tools/driver.md"), /^title: .*$/m, "title: A broad driver");
  await build();
  expect(readFileSync(join(siteDir, "modules/box/index.html"), "utf8")).toContain("A broad driver");
  expect(treeOf(siteDir)).toEqual(await fresh(contentDir));
});

test("what is found again after a change is what a fresh look finds, in the module changed and in those that name it", async () => {
  const contentDir = programmeOf(4);
  const siteDir = join(temporaryFolder(), "site");
  const crew = hands(2, contentDir);
  const found = async (by: Crew) =>
    (await buildWith(by, { contentDir, siteDir, cacheDir: undefined, offline: false })).diagnostics.map(
      ({ code, file }) => `${code} ${file}`,
    );
  const [first, second] = [0, 1].map((number) => `modules/${moduleId(number)}/module.md`);
  const steps: readonly (readonly [change: () => void, expected: string[]])[] = [
    [
      () =>
        appendFileSync(
          moduleFile(contentDir, 0),
          `\n[there](../${moduleId(1)}/module.md#the-end) [no](no.md)\n`,
        ),
      [`dead-link ${first}`, `dead-link ${first}`],
    ],
    // Another file's change mends one of the two, and a fault of its own is told beside the other.
    [
      () => appendFileSync(moduleFile(contentDir, 1), "\n## The end\n\n[no](no.md)\n"),
      [`dead-link ${first}`, `dead-link ${second}`],
    ],
    [() => change(moduleFile(contentDir, 1), "[no](no.md)", "Nothing."), [`dead-link ${first}`]],
    [
      () => change(moduleFile(contentDir, 1), "## The end", "## An end"),
      [`dead-link ${first}`, `dead-link ${first}`],
    ],
  ];
  await found(crew);
  for (const [act, expected] of steps) {
    act();
    const again = await found(crew);
    expect(again.filter((each) => each.startsWith("dead-link"))).toEqual(expected);
    expect(again).toEqual(await found(hands(1, contentDir)));
  }
});
