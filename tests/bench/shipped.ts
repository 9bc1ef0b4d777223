/** Code as pages and commands run it; what runs the benchmark keeps the names of functions, which takes time at each call. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { projectDir } from "../support/project.ts";

/** Bundles a file of `src` into the scratch folder and gives what it exports. */
export async function asShipped<Exports>(scratch: string, source: string): Promise<Exports> {
  const outfile = join(scratch, `${source.replaceAll("/", "-")}.mjs`);
  const entry = join(projectDir, "src", source);
  await build({
    entryPoints: [entry],
    bundle: true,
    platform: "node",
    format: "esm",
    outfile,
    logLevel: "error",
  });
  return (await import(pathToFileURL(outfile).href)) as Exports;
}
