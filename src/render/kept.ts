/** Pages of an earlier site that need not be made again. */
import { linkSync, mkdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Page, PageGroup } from "./eleventy.ts";

export interface Kept {
  /** The folder of the earlier site. */
  readonly siteDir: string;
  /** By file: what a page was made from, and when it was written; another time says that somebody has touched it since. */
  readonly pages: Map<string, { readonly inputs: Page["inputs"]; readonly written: number }>;
}

/** Links what would come out the same from the earlier site into `outDir`, and gives the pages that are left to be made. */
export function linkUnchanged(groups: readonly PageGroup[], kept: Kept, outDir: string): PageGroup[] {
  return groups.map(({ name, pages }) => ({
    name,
    pages: pages.filter((page) => !linkOne(page, kept, outDir)),
  }));
}

/** Keeps in mind the pages that have been written. */
export function keep(groups: readonly PageGroup[], kept: Kept, outDir: string): void {
  for (const { file, inputs } of groups.flatMap(({ pages }) => pages)) {
    kept.pages.set(file, { inputs, written: statSync(join(outDir, file)).mtimeMs });
  }
}

function linkOne({ file, inputs }: Page, { siteDir, pages }: Kept, outDir: string): boolean {
  const before = pages.get(file);
  if (before === undefined || !isEqual(before.inputs, inputs)) return false;
  const from = join(siteDir, file);
  if (statSync(from, { throwIfNoEntry: false })?.mtimeMs !== before.written) return false;
  mkdirSync(dirname(join(outDir, file)), { recursive: true });
  linkSync(from, join(outDir, file));
  return true;
}

const isEqual = (a: Page["inputs"], b: Page["inputs"]): boolean =>
  a.length === b.length && a.every((input, index) => input === b[index]);
