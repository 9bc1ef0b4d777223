/** How far a build is: told on a terminal, in one line that is gone at the end. */
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { buildSite } from "../../src/build.ts";
import { progressOn } from "../../src/cli/progress.ts";
import type { Page } from "../../src/render/page.ts";
import { counting, type PageCount, pageCount, readCount } from "../../src/render/page-count.ts";
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
  const lines = (await builtOn(true)).split(clear);
  expect(lines.slice(0, 4)).toEqual(["", "Reading …", "Checking 1 module …", "Writing 1 module …"]);
  expect(lines.at(-1)).toBe("");
  for (const line of lines.slice(4, -1)) expect(line).toMatch(/^Writing 1 module(?:: \d+ of \d+ pages)? …$/);
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

afterEach(() => vi.useRealTimers());

test("while pages are made it says how many of how many, ten times a second at most, and not after the end", () => {
  vi.useFakeTimers();
  const written: string[] = [];
  const progress = progressOn({ isTTY: true, columns: 80, write: (text) => written.push(text) });
  const count = pageCount(2);
  progress.tell("writing", 1000, count);
  const page = { file: "a.html", make: () => "text", inputs: [] };
  const group = (pages: readonly Page[]) => ({ name: "group", pages });
  const [{ pages = [] } = {}] = counting([group(Array(1000).fill(page)), group([page])], count);
  // Half of the hands know what they have to do, so that the whole is not known.
  vi.advanceTimersByTime(1000);
  expect(written).toEqual([`${clear}Writing 1,000 modules …`]);
  counting([group(Array(199).fill(page))], count);
  // One each millisecond.
  for (const { make } of pages) {
    expect(make()).toBe("text");
    vi.advanceTimersByTime(1);
  }
  expect(written.length).toBeGreaterThan(5);
  expect(written.length).toBeLessThanOrEqual(11);
  expect(written.at(-1)).toBe(`${clear}Writing 1,000 modules: 1,000 of 1,200 pages …`);
  vi.advanceTimersByTime(5000);
  const still = written.length;
  progress.end();
  expect(written.slice(still)).toEqual([clear]);
  pages[0]!.make();
  vi.advanceTimersByTime(5000);
  expect(written).toHaveLength(still + 1);
  expect(vi.getTimerCount()).toBe(0);
});

test("elsewhere no timer runs", () => {
  vi.useFakeTimers();
  const write = vi.fn();
  progressOn({ isTTY: false, write }).tell("writing", 1, pageCount(1));
  expect(vi.getTimerCount()).toBe(0);
  vi.advanceTimersByTime(1000);
  expect(write).not.toHaveBeenCalled();
});

test("a whole build counts each of its pages, and as many as it has", { timeout: 60_000 }, async () => {
  let count: PageCount | undefined;
  const folders = { contentDir: writeFolder(soundFiles), siteDir: join(temporaryFolder(), "site") };
  const { summary } = await buildSite({
    ...folders,
    cacheDir: undefined,
    tell: (...told) => {
      count = told[2] ?? count;
    },
  });
  expect(summary.pages).toBeGreaterThan(10);
  expect(readCount(count!)).toEqual({ made: summary.pages, wanted: summary.pages });
});
