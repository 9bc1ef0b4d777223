/** Runs Eleventy over pages that are made here: few paginated virtual templates, no files of its own to read. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import Eleventy, { type TemplateData, type UserConfig } from "@11ty/eleventy";
import type { Page } from "./page.ts";

/** Pages of one kind, which go through one template. */
export interface PageGroup {
  readonly name: string;
  readonly pages: readonly Page[];
}

/**
 * Writes all pages under `outDir`. A fresh instance each time, because a second write of the same one gives stale content;
 * an empty input folder, because Eleventy would otherwise take up, and run, whatever lies there. It is named from the
 * working folder, because Eleventy cuts the working folder's name off a whole path wherever the letters agree, also in the
 * middle of a name: from `/` it found no template at all.
 */
export async function writePages(groups: readonly PageGroup[], outDir: string): Promise<void> {
  if (groups.every(({ pages }) => pages.length === 0)) return;
  const input = await mkdtemp(join(tmpdir(), "benchwright-"));
  try {
    const eleventy = new Eleventy(relative(".", input), outDir, {
      configPath: "",
      quietMode: true,
      config: (config) => {
        config.setTemplateFormats(["11ty.js"]);
        for (const group of groups) if (group.pages.length > 0) addGroup(config, group);
      },
    });
    eleventy.disableLogger();
    await eleventy.write();
  } finally {
    await rm(input, { recursive: true, force: true });
  }
}

function addGroup(config: UserConfig, { name, pages }: PageGroup): void {
  const makers = new Map(pages.map((page) => [page.file, page.make]));
  config.addTemplate(`${name}.11ty.js`, ({ file }) => makers.get(file)!(), {
    files: [...makers.keys()],
    pagination: { data: "files", size: 1, alias: "file" },
    permalink: ({ file }: TemplateData) => file,
    eleventyExcludeFromCollections: true,
  });
}
