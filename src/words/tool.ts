/** The tool compiled for a language: the same code with its words in place. Made once and kept beside the package. */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { toolFolder } from "../tool-folder.ts";
import type { Words } from "./languages.ts";
import { bundleOptions } from "./plugin.ts";

/** The compiled program, as a URL to import. Rejects where they can't be compiled or kept. */
export async function toolIn(words: Words): Promise<string> {
  const folder = join(toolFolder(".cache/tool"), keyOf(words));
  if (!existsSync(folder)) await compile(words, folder);
  return pathToFileURL(join(folder, "main.js")).href;
}

/** Names, sizes and times of all sources, what runs them, and the words themselves. */
function keyOf({ language, files }: Words): string {
  const hash = createHash("sha256").update(process.version);
  for (const folder of ["src", "layouts"]) {
    const names = readdirSync(toolFolder(folder), { recursive: true, encoding: "utf8" }).sort();
    for (const name of names) {
      const { size, mtimeMs } = statSync(join(toolFolder(folder), name));
      hash.update(`${folder}/${name}\0${size}\0${mtimeMs}\0`);
    }
  }
  for (const { text } of files) hash.update(`${text}\0`);
  return `${hash.digest("hex").slice(0, 32)}-${language}`;
}

/** Made beside its place and renamed, so that others who start at the same moment find all of it or nothing. */
async function compile(words: Words, folder: string): Promise<void> {
  const beside = `${folder}.${process.pid}`;
  const { plugins, define } = bundleOptions(words);
  mkdirSync(beside, { recursive: true });
  try {
    await build({
      entryPoints: {
        main: toolFolder("src/cli/main.ts"),
        worker: toolFolder("src/crew/worker.ts"),
        "roster-worker": toolFolder("src/cli/roster/worker.ts"),
      },
      outdir: beside,
      bundle: true,
      splitting: true,
      format: "esm",
      platform: "node",
      target: "node20",
      packages: "external",
      plugins,
      define: { ...define, TOOL_HOME: JSON.stringify(pathToFileURL(toolFolder("")).href) },
      logLevel: "silent",
    });
    renameSync(beside, folder);
  } catch (cause) {
    rmSync(beside, { recursive: true, force: true });
    if (!existsSync(folder)) throw cause;
  }
}
