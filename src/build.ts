/** The whole line: files → sources → content → site → pages, put in place at the end. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { bundle } from "./bundle/bundle.ts";
import { swapIn } from "./bundle/swap.ts";
import { derive } from "./derive/derive.ts";
import { type Diagnostic, sortDiagnostics } from "./model/diagnostic.ts";
import { read } from "./read/read.ts";
import { render } from "./render/render.ts";
import { validate } from "./validate/validate.ts";

export interface BuildResult {
  readonly summary: { readonly pages: number; readonly modules: number; readonly ms: number };
  readonly diagnostics: readonly Diagnostic[];
  readonly texts: ReadonlyMap<string, string>;
}

/** Layouts and scripts ship with the tool, beside this file. */
const tool = (folder: string): string => fileURLToPath(new URL(folder, import.meta.url));

/**
 * Builds the content folder into the site folder. On any error nothing is rendered and the site stays as it was. Throws
 * only for a target that it must not replace (`TargetRefused`) or a fault of its own.
 */
export async function buildSite(contentDir: string, siteDir: string): Promise<BuildResult> {
  const started = performance.now();
  const { reading, diagnostics: inText } = read(contentDir);
  const { content, diagnostics: inContent } = validate(reading);
  const diagnostics = sortDiagnostics([...inText, ...inContent]);
  const result = (pages: number): BuildResult => ({
    summary: { pages, modules: content.modules.size, ms: Math.round(performance.now() - started) },
    diagnostics,
    texts: reading.texts,
  });
  if (diagnostics.some(({ severity }) => severity === "error")) return result(0);
  const site = derive(content);
  const pages = await swapIn(resolve(siteDir), async (outDir) => {
    const assets = await bundle(site.search, {
      outDir,
      layoutsDir: tool("../layouts"),
      browserDir: tool("./browser"),
      minify: true,
    });
    return render(site, assets, { contentDir, outDir });
  });
  return result(pages);
}
