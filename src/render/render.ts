/** Site to files: operation sheets and pages of the programme by way of Eleventy, the rest directly. */
import { type Book, bookOf } from "../../layouts/book.ts";
import type { Address } from "../model/address.ts";
import type { AuthorsGuide } from "../model/authors-guide.ts";
import type { Size } from "../model/picture-files.ts";
import type { Assets, Site } from "../model/site.ts";
import { type PageGroup, writePages } from "./eleventy.ts";
import { copyLayoutFiles } from "./files.ts";
import { type Kept, keep, sortOut, type Written } from "./kept.ts";
import { counting, type PageCount } from "./page-count.ts";
import { pagesOfModules, programmeGroups } from "./pages.ts";
import { proseRenderer } from "./prose.ts";
import { writeInStretches } from "./write.ts";

/** Sizes of the content's pictures, by path. */
export type Sizes = ReadonlyMap<string, Size>;

/**
 * Writes the pages of the modules whose views the site holds. Pages that would come out as they stand in `kept` are left
 * there.
 */
export async function renderModules(
  site: Site,
  assets: Assets,
  sizes: Sizes,
  outDir: string,
  kept: Kept = { siteDir: undefined, pages: new Map() },
  counted?: PageCount,
): Promise<Written> {
  const { sheets, others } = pagesOfModules(bookFor(site, assets, sizes));
  const ofSheets = sortOut(sheets, kept);
  const ofOthers = sortOut(others, kept);
  const [byEleventy, directly] = counting(
    [
      { name: "module", pages: ofSheets.changed },
      { name: "companion", pages: ofOthers.changed },
    ],
    counted,
  );
  await writePages([byEleventy!], outDir);
  await writeInStretches(directly!.pages, outDir, kept.note);
  keep([...ofSheets.changed, ...ofOthers.changed], kept, outDir);
  return {
    pages: sheets.length + others.length,
    unchanged: [...ofSheets.unchanged, ...ofOthers.unchanged],
  };
}

/**
 * Writes the pages of the programme and the sheets, and pictograms, and returns how many pages. The view of the
 * module that the home page shows must be among the site's. `assets` names files that `bundle` writes. With
 * `authors` there is a page for those who write modules.
 */
export async function renderProgramme(
  site: Site,
  assets: Assets,
  sizes: Sizes,
  outDir: string,
  authors?: AuthorsGuide,
  counted?: PageCount,
): Promise<number> {
  const groups = programmeGroups({ ...bookFor(site, assets, sizes), authors });
  await writePages(counting(groups, counted), outDir);
  await copyLayoutFiles(outDir);
  return count(groups);
}

function bookFor(site: Site, assets: Assets, sizes: Sizes): Book {
  const sizeOf = (file: string) => sizes.get(file);
  return bookOf(site, assets, proseRenderer(sizeOf, placesOn(site)), sizeOf);
}

const count = (groups: readonly PageGroup[]): number =>
  groups.reduce((sum, { pages }) => sum + pages.length, 0);

/** A bench view has the places of steps and no other; every other page has all of its file. */
function placesOn({ modules }: Site): (page: Address, at: string) => boolean {
  const steps = new Map(
    modules.map(({ module, steps }) => [module.id, new Set(steps.map(({ step }) => step.id))]),
  );
  return (page, at) => page.kind !== "bench" || (steps.get(page.id)?.has(at) ?? false);
}
