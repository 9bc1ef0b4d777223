/** Files that go into the site as they are: pictograms and the icon of the layouts. */
import { copyFile, mkdir, readdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { toolFolder } from "../tool-folder.ts";

const layouts = toolFolder("layouts");

/** Copies what layouts refer to under `assets/`. */
export async function copyLayoutFiles(outDir: string): Promise<void> {
  await copy(join(layouts, "icon.svg"), join(outDir, "assets/icon.svg"));
  for (const name of await readdir(join(layouts, "pictograms"))) {
    await copy(join(layouts, "pictograms", name), join(outDir, "assets", name));
  }
}

async function copy(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  await copyFile(from, to);
}
