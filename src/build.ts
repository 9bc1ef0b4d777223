/** The whole line: files → sources → content → site → pages, put in place at the end. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { keepSite, restoreSite } from "./bundle/site-cache.ts";
import { swapIn } from "./bundle/swap.ts";
import { derive } from "./derive/derive.ts";
import { type Diagnostic, sortDiagnostics } from "./model/diagnostic.ts";
import type { Site } from "./model/site.ts";
import { digestOf } from "./read/digest.ts";
import { read } from "./read/read.ts";
import { validate } from "./validate/validate.ts";

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

export interface BuildOptions {
  readonly contentDir: string;
  readonly siteDir: string;
  /** Where sites are kept by digest; undefined to keep none. */
  readonly cacheDir: string | undefined;
}

/**
 * Builds the content folder into the site folder. On any error nothing is rendered and the site stays as it was. Content
 * that was built before without a fault or warning comes from the cache. Throws only for a target that it must not replace
 * (`TargetRefused`) or a fault of its own.
 */
export async function buildSite({ contentDir, siteDir, cacheDir }: BuildOptions): Promise<BuildResult> {
  const started = performance.now();
  const summary = (made: { pages: number; modules: number }): Summary => ({
    ...made,
    ms: Math.round(performance.now() - started),
  });
  const digest = cacheDir === undefined ? undefined : digestOf([contentDir, tool("./"), tool("../layouts")]);
  return swapIn(resolve(siteDir), async (outDir, leave) => {
    const before = digest && restoreSite<{ pages: number; modules: number }>(cacheDir!, digest, outDir);
    if (before) return { summary: summary(before), diagnostics: [], texts: new Map() };
    const { reading, diagnostics: inText } = read(contentDir);
    const { content, diagnostics: inContent } = validate(reading);
    const diagnostics = sortDiagnostics([...inText, ...inContent]);
    const modules = content.modules.size;
    if (diagnostics.some(({ severity }) => severity === "error")) {
      leave();
      return { summary: summary({ pages: 0, modules }), diagnostics, texts: reading.texts };
    }
    const pages = await write(derive(content), contentDir, outDir);
    if (digest && diagnostics.length === 0) keepSite(cacheDir!, digest, outDir, { pages, modules });
    return { summary: summary({ pages, modules }), diagnostics, texts: reading.texts };
  });
}

/** Layouts and scripts ship with the tool, beside this file. */
const tool = (folder: string): string => fileURLToPath(new URL(folder, import.meta.url));

/** The last stages are loaded only when there is something to render. */
async function write(site: Site, contentDir: string, outDir: string): Promise<number> {
  const [{ bundle }, { render }] = await Promise.all([
    import("./bundle/bundle.ts"),
    import("./render/render.ts"),
  ]);
  const folders = { outDir, layoutsDir: tool("../layouts"), browserDir: tool("./browser") };
  return render(site, await bundle(site.search, { ...folders, minify: true }), { contentDir, outDir });
}
