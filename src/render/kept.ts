/** Pages of the site that stands which need not be made again. */
import { statSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "./page.ts";
import type { Note } from "./write.ts";

export interface Kept {
  /** The folder of the site that stands; undefined where all is to be made. */
  readonly siteDir: string | undefined;
  /** By file: what a page was made from, and when it was written; another time says that somebody has touched it since. */
  readonly pages: Map<string, { readonly inputs: Page["inputs"]; readonly written: number }>;
  /** Told of files as they are written; of those that Eleventy writes it is not. */
  readonly note?: Note | undefined;
}

/** What has been made, and what stands already as it would come out. */
export interface Written {
  readonly pages: number;
  /** Files of the site that stands, which were not written again. */
  readonly unchanged: readonly string[];
}

/** The pages that are to be made, and the files of those that stand as they would come out. */
export function sortOut(
  pages: readonly Page[],
  kept: Kept,
): { readonly changed: Page[]; readonly unchanged: string[] } {
  const changed = pages.filter((page) => !stands(page, kept));
  const isChanged = new Set(changed);
  return { changed, unchanged: pages.filter((page) => !isChanged.has(page)).map(({ file }) => file) };
}

function stands({ file, inputs }: Page, { siteDir, pages }: Kept): boolean {
  const before = pages.get(file);
  if (siteDir === undefined || before === undefined || !isEqual(before.inputs, inputs)) return false;
  return statSync(join(siteDir, file), { throwIfNoEntry: false })?.mtimeMs === before.written;
}

/** Keeps in mind the pages that have been written below `outDir`, from where they go into the site as they are. */
export function keep(pages: readonly Page[], kept: Kept, outDir: string): void {
  for (const { file, inputs } of pages) {
    kept.pages.set(file, { inputs, written: statSync(join(outDir, file)).mtimeMs });
  }
}

const isEqual = (a: Page["inputs"], b: Page["inputs"]): boolean =>
  a.length === b.length && a.every((input, index) => input === b[index]);
