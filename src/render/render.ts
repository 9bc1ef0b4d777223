/** Site to files: the pages by way of Eleventy, the pictures as they are. */
import { bookOf } from "../../layouts/book.ts";
import type { Assets, Site } from "../model/site.ts";
import { writePages } from "./eleventy.ts";
import { copyLayoutFiles, copyPictures } from "./files.ts";
import { pageGroups } from "./pages.ts";
import { pictureSizes } from "./picture-size.ts";
import { proseRenderer } from "./prose.ts";

export interface Folders {
  /** Where the pictures lie. */
  readonly contentDir: string;
  /** The site's folder; what lies in it already stays. */
  readonly outDir: string;
}

/** Writes every page, picture and pictogram, and returns how many pages. `assets` names files that `bundle` writes. */
export async function render(site: Site, assets: Assets, { contentDir, outDir }: Folders): Promise<number> {
  const sizeOf = pictureSizes(contentDir);
  const groups = pageGroups(bookOf(site, assets, proseRenderer(sizeOf), sizeOf));
  await writePages(groups, outDir);
  await copyPictures(site.pictures, contentDir, outDir);
  await copyLayoutFiles(outDir);
  return groups.reduce((sum, group) => sum + group.pages.length, 0);
}
