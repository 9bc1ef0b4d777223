/** The whole line: files → sources → content → site → pages, put in place at the end. */
import { resolve } from "node:path";
import { specimenModule } from "../layouts/components/specimen.ts";
import { sumDocuments } from "../layouts/sum-documents.ts";
import { keepSite, restoreSite } from "./bundle/site-cache.ts";
import { stillStands, swapIn } from "./bundle/swap.ts";
import { type Crew, gather } from "./crew/crew.ts";
import type { DerivedShare, Folders, Found } from "./crew/hand.ts";
import { language } from "./engine/words.ts";
import { type Diagnostic, sortDiagnostics } from "./model/diagnostic.ts";
import { modulePath } from "./model/link.ts";
import type { Size } from "./model/picture-files.ts";
import type { SearchDocument } from "./model/site.ts";
import { PictureShop, type PutPictures } from "./pictures/shop.ts";
import { digestOf } from "./read/digest.ts";
import { listsOutOfDate } from "./read/out-of-date.ts";
import type { Written } from "./render/kept.ts";
import { type PageCount, pageCount } from "./render/page-count.ts";
import { toolFolder } from "./tool-folder.ts";
import { wordsOfScripts } from "./words/of-scripts.ts";

export interface BuildResult {
  readonly summary: Summary;
  readonly diagnostics: readonly Diagnostic[];
  readonly texts: ReadonlyMap<string, string>;
}

interface Summary {
  readonly pages: number;
  readonly modules: number;
  readonly ms: number;
}

/** What is kept with a site: its warnings are told each time. */
interface KeptNote {
  readonly made: { readonly pages: number; readonly modules: number };
  readonly warnings: readonly Diagnostic[];
  readonly texts: readonly (readonly [path: string, text: string])[];
}

/** What a build is at. */
export type Stage = "reading" | "checking" | "writing";

export interface BuildOptions {
  readonly contentDir: string;
  readonly siteDir: string;
  /** Where sites are kept by digest; undefined to keep none. */
  readonly cacheDir: string | undefined;
  /** Where its pictures are made; where nothing is said, all anew. */
  readonly pictures?: PictureShop;
  /** False for a site that no device is to keep, as while its content is being written. True where nothing is said. */
  readonly offline?: boolean;
  /** Told at the beginning of each stage, with how many modules there are once that is known, and with a count of pages once they are made. */
  readonly tell?: (stage: Stage, modules?: number, count?: PageCount) => void;
}

/** Builds once. See `buildWith`. */
export async function buildSite(options: BuildOptions): Promise<BuildResult> {
  const crew = gather(options.contentDir);
  try {
    return await buildWith(crew, options);
  } finally {
    await crew.end();
  }
}

/**
 * Builds the content folder into the site folder. On any error nothing is rendered and the site stays as it was. Content
 * that was built before comes from the cache with its warnings; a crew that has built before does again only
 * what has changed. Throws only for a target that it must not replace (`TargetRefused`) or a fault of its own.
 */
export async function buildWith(
  crew: Crew,
  {
    contentDir,
    siteDir,
    cacheDir,
    pictures = new PictureShop({ contentDir, cacheDir: undefined }),
    offline = true,
    tell = () => undefined,
  }: BuildOptions,
): Promise<BuildResult> {
  const started = performance.now();
  const summary = (made: { pages: number; modules: number }): Summary => ({
    ...made,
    ms: Math.round(performance.now() - started),
  });
  const digest = cacheDir === undefined ? undefined : keyOf(contentDir);
  return swapIn(
    siteDir,
    async (outDir, otherwise) => {
      const before = digest && restoreSite<KeptNote>(cacheDir!, digest, outDir);
      if (before)
        return {
          summary: summary(before.made),
          diagnostics: before.warnings,
          texts: new Map(before.texts),
        };
      tell("reading");
      const opened = await crew.all((hand) => hand.open());
      const outlines = opened.flatMap((share) => share.outlines).sort((a, b) => (a.path < b.path ? -1 : 1));
      tell("checking", outlines.filter(({ path }) => path.endsWith("/module.md")).length);
      const shown = opened[0]!.pictures;
      const [checked, looked] = await together(
        crew.all((hand) => hand.check(outlines)),
        pictures.look(shown),
      );
      const found = gathered([...opened, ...checked, looked]);
      const modules = outlines.filter(({ path, isSound }) => isSound && path.endsWith("/module.md")).length;
      // What devices keep is a list of all files, and what is kept by digest a whole site: those are made as a whole.
      const isWhole = offline || digest !== undefined || !stillStands(siteDir, crew.standing);
      const count = pageCount(crew.hands.length);
      if (!hasErrors(found)) tell("writing", modules, count);
      const put = hasErrors(found) ? nothingPut : await pictures.put(shown, outDir, !isWhole);
      const { diagnostics, texts } = gathered([found, { diagnostics: put.diagnostics, texts: new Map() }]);
      if (hasErrors({ diagnostics })) {
        otherwise.leave();
        return { summary: summary({ pages: 0, modules }), diagnostics, texts };
      }
      const folders = { contentDir, outDir };
      const { pages, unchanged } = await write(
        crew,
        folders,
        looked.sizes,
        isWhole ? undefined : resolve(siteDir),
        offline,
        count,
      );
      const made = { pages, modules };
      if (!isWhole) otherwise.update([...unchanged, ...put.staying]);
      if (digest)
        keepSite<KeptNote>(cacheDir!, digest, outDir, { made, warnings: diagnostics, texts: [...texts] });
      return { summary: summary(made), diagnostics, texts };
    },
    crew.standing,
  );
}

/** Of the content, the tool, and what has run out meanwhile; undefined where something could not be read. */
function keyOf(contentDir: string): string | undefined {
  const digest = digestOf([contentDir, toolFolder("src"), toolFolder("layouts"), toolFolder("words")]);
  const lapsed = listsOutOfDate(contentDir, new Date()).length;
  return digest === undefined || lapsed === 0 ? digest : `${digest}-${lapsed}`;
}

function gathered(found: readonly Found[]): Found {
  return {
    diagnostics: sortDiagnostics(found.flatMap(({ diagnostics }) => diagnostics)),
    texts: new Map(found.flatMap(({ texts }) => [...texts])),
  };
}

const nothingPut: PutPictures = { diagnostics: [], staying: [] };

const hasErrors = ({ diagnostics }: Pick<Found, "diagnostics">): boolean =>
  diagnostics.some(({ severity }) => severity === "error");

/** Both, when both have ended. */
async function together<A, B>(one: Promise<A>, other: Promise<B>): Promise<[A, B]> {
  await Promise.allSettled([one, other]);
  return [await one, await other];
}

/** The stages after the checks: loaded only when there is something to write. `siteDir` is a site that is to be changed. */
async function write(
  crew: Crew,
  folders: Folders,
  sizes: ReadonlyMap<string, Size>,
  siteDir: string | undefined,
  offline: boolean,
  count: PageCount,
): Promise<Written> {
  const { bundleAssets } = await import("./bundle/bundle.ts");
  const { writeSearch } = await import("./bundle/search.ts");
  const bundling = {
    outDir: folders.outDir,
    browserDir: toolFolder("src/browser"),
    words: await wordsOfScripts(language, folders.contentDir),
  };
  const bundled = bundleAssets({ ...bundling, layoutsDir: toolFolder("layouts"), minify: true, offline });
  const derived = await crew.all((hand) => hand.derive());
  const cards = derived.flatMap((share) => share.cards);
  const releases = derived.flatMap((share) => share.releases);
  const task = { cards, releases, assets: await bundled, sizes, folders, siteDir, count };
  const [ofModules, index] = await Promise.all([
    crew.all((hand) => hand.renderModules(task)),
    writeSearch([...inOrder(derived), ...sumDocuments()], folders.outDir, crew.search),
  ]);
  const assets = { ...task.assets, scripts: new Map([...task.assets.scripts, ["search-index", index]]) };
  const ofProgramme = await crew
    .handFor(modulePath(specimenModule(cards) ?? ""))
    .renderProgramme({ ...task, assets });
  const listed = ofModules.flatMap((each) => each.listed);
  if (offline) await (await import("./bundle/offline.ts")).writeOffline({ ...bundling, listed });
  return {
    pages: ofModules.reduce((sum, { pages }) => sum + pages, ofProgramme),
    unchanged: ofModules.flatMap(({ unchanged }) => unchanged),
  };
}

/** Search documents by the ids of their modules, then sheets, then sums, however the modules were shared out. */
function inOrder(derived: readonly DerivedShare[]): SearchDocument[] {
  return derived
    .flatMap(({ documents }) => [...documents])
    .sort(([a], [b]) => (a === "" || (b !== "" && a > b) ? 1 : -1))
    .flatMap(([, documents]) => documents);
}
