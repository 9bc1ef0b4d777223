/** Site to files: the pages by way of Eleventy, the pictures as they are. */
import { bookOf } from "../../layouts/book.ts";
import type { Address } from "../model/address.ts";
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
  const groups = pageGroups(bookOf(site, assets, proseRenderer(sizeOf, placesOn(site)), sizeOf));
  await writePages(groups, outDir);
  await copyPictures(site.pictures, contentDir, outDir);
  await copyLayoutFiles(outDir);
  return groups.reduce((sum, group) => sum + group.pages.length, 0);
}

/** A bench view has the places of steps and no other; every other page has all of its file. */
function placesOn({ modules }: Site): (page: Address, at: string) => boolean {
  const steps = new Map(
    modules.map(({ module, steps }) => [module.id, new Set(steps.map(({ step }) => step.id))]),
  );
  return (page, at) => page.kind !== "bench" || (steps.get(page.id)?.has(at) ?? false);
}
