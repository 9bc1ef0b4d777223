// The program compiled from its sources: made once for each state of them, and kept beside the package. Not TypeScript,
// because it is what makes TypeScript run.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const sources = ["src", "layouts"];

export const keptIn = (home) => join(home, ".cache", "tool");

/** The folder for the sources as they are: their names, sizes and times, what runs them, and `texts` that go into the code besides. */
export function folderFor(home, texts = [], suffix = "") {
  const hash = createHash("sha256").update(process.version);
  const names = sources.flatMap((folder) =>
    readdirSync(join(home, folder), { recursive: true }).map((name) => join(folder, name)),
  );
  for (const name of names.sort()) {
    const { size, mtimeMs } = statSync(join(home, name));
    hash.update(`${name}\0${size}\0${mtimeMs}\0`);
  }
  for (const text of texts) hash.update(`${text}\0`);
  return join(keptIn(home), `${hash.digest("hex").slice(0, 32)}${suffix}`);
}

/** Made beside its place and renamed, so that others who start at the same moment find all of it or nothing. */
export async function compile(home, folder, { plugins = [], define = {} } = {}) {
  const { build } = await import("esbuild");
  const beside = `${folder}.${process.pid}`;
  mkdirSync(beside, { recursive: true });
  try {
    await build({
      entryPoints: {
        main: join(home, "src/cli/main.ts"),
        worker: join(home, "src/crew/worker.ts"),
        "roster-worker": join(home, "src/cli/roster/worker.ts"),
      },
      outdir: beside,
      bundle: true,
      splitting: true,
      format: "esm",
      platform: "node",
      target: "node20",
      packages: "external",
      plugins,
      define: { ...define, TOOL_HOME: JSON.stringify(pathToFileURL(home).href) },
      logLevel: "silent",
    });
    renameSync(beside, folder);
  } catch (cause) {
    rmSync(beside, { recursive: true, force: true });
    if (!existsSync(folder)) throw cause;
  }
}
