/** Bundles scripts, style sheet and search index into fingerprinted files of the site. */
import { mkdir } from "node:fs/promises";
import { join, relative, resolve } from "node:path";
import * as esbuild from "esbuild";
import type { Assets } from "../model/site.ts";
import { browsers } from "./one-script.ts";

/** Scripts, each for the pages of one kind; `<browserDir>/<entry>.ts`. */
export const entries = [
  "bench",
  "paper",
  "practice",
  "dry-run",
  "quiz",
  "search",
  "sums",
  "faults",
  "read",
  "figures",
  "enlarge",
  "drawing",
  "zoom",
  "recorder",
  "record",
  "check",
  "desk",
  "evening",
  "offline",
  "keep",
] as const;

/** Those without which no device keeps the site. */
const offlineEntries: ReadonlySet<string> = new Set(["offline", "keep"]);

export interface BundleOptions {
  /** The folder of the built site. */
  readonly outDir: string;
  readonly layoutsDir: string;
  readonly browserDir: string;
  readonly minify: boolean;
  /** Whether devices are to keep the site; they are where nothing is said. */
  readonly offline?: boolean;
  /** What puts the words of another language than English into the scripts. */
  readonly words?: Pick<esbuild.BuildOptions, "plugins" | "define">;
}

/**
 * Bundles the browser entries as classic scripts, because module scripts don't run from disk, and the style sheets with
 * the fonts that they name. Throws where that can't be done, which is a fault of the tool and not of the content.
 */
export async function bundleAssets(options: BundleOptions): Promise<Assets> {
  const [scripts, styles] = await together([
    run(
      options,
      entries.map((entry) => join(options.browserDir, `${entry}.ts`)),
    ),
    run(
      options,
      ["main.css", "further.css", "paper/paper.css"].map((name) => join(options.layoutsDir, "styles", name)),
    ),
  ]);
  return {
    style: styles.get("main.css")!,
    furtherStyle: styles.get("further.css")!,
    paperStyle: styles.get("paper.css")!,
    scripts: new Map(
      entries
        .filter((entry) => options.offline !== false || !offlineEntries.has(entry))
        .map((entry) => [entry, scripts.get(`${entry}.ts`)!]),
    ),
  };
}

/** Gives the name of each output, relative to the site, by its entry's file name. */
async function run(options: BundleOptions, entryPoints: string[]): Promise<Map<string, string>> {
  const outDir = resolve(options.outDir);
  await mkdir(outDir, { recursive: true });
  const { metafile } = await esbuild.build({
    entryPoints,
    outdir: join(outDir, "assets"),
    absWorkingDir: outDir,
    bundle: true,
    minify: options.minify,
    format: "iife",
    // The oldest that have the list methods of ES2023, which the engine uses.
    target: browsers,
    charset: "utf8",
    entryNames: "[name]-[hash]",
    assetNames: "[name]-[hash]",
    loader: { ".woff2": "file", ".woff": "file", ".svg": "file" },
    logLevel: "silent",
    metafile: true,
    define: { WORDS_LANGUAGE: '"en-GB"' },
    ...options.words,
  });
  return outputs(metafile, outDir);
}

function outputs(metafile: esbuild.Metafile, outDir: string): Map<string, string> {
  const names = new Map<string, string>();
  for (const [output, { entryPoint }] of Object.entries(metafile.outputs)) {
    if (entryPoint !== undefined)
      names.set(
        entryPoint.slice(entryPoint.lastIndexOf("/") + 1),
        slashed(relative(outDir, join(outDir, output))),
      );
  }
  return names;
}

const slashed = (path: string): string => path.replaceAll("\\", "/");

/** Like `Promise.all`, but fails only when all have ended, so that nothing is still written when the caller clears up. */
async function together<Work extends readonly unknown[]>(
  work: {
    readonly [At in keyof Work]: Promise<Work[At]>;
  },
): Promise<Work> {
  await Promise.allSettled(work);
  return (await Promise.all(work)) as unknown as Work;
}
