#!/usr/bin/env node
// The one file that is not TypeScript: Node 20 can't start a TypeScript file. It compiles the tool once, keeps that beside
// the package and starts it from there; where nothing can be written it has each file compiled as it is loaded.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const home = fileURLToPath(new URL("../..", import.meta.url));
const keptIn = join(home, ".cache", "tool");
const week = 7 * 24 * 3600 * 1000;

const entry = await compiled().catch(() => undefined);
if (entry === undefined) {
  const { register } = await import("tsx/esm/api");
  register();
  await start("./main.ts");
} else await start(pathToFileURL(entry).href);

/** A programme in another language than English has the program compiled for that, which goes on. */
async function start(program) {
  const { elsewhere } = await import(program);
  if (elsewhere !== undefined) await import(elsewhere);
}

/** The compiled entry. Rejects where it can't be made or kept. */
async function compiled() {
  const folder = join(keptIn, keyOf(["src", "layouts"]));
  if (!existsSync(folder)) await compile(folder);
  return join(folder, "main.js");
}

/** Names, sizes and times of all sources, and what runs them. */
function keyOf(folders) {
  const hash = createHash("sha256").update(process.version);
  const names = folders.flatMap((folder) =>
    readdirSync(join(home, folder), { recursive: true }).map((name) => join(folder, name)),
  );
  for (const name of names.sort()) {
    const { size, mtimeMs } = statSync(join(home, name));
    hash.update(`${name}\0${size}\0${mtimeMs}\0`);
  }
  return hash.digest("hex").slice(0, 32);
}

/** Made beside its place and renamed, so that others who start at the same moment find all of it or nothing. */
async function compile(folder) {
  const { build } = await import("esbuild");
  const beside = `${folder}.${process.pid}`;
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
    define: { TOOL_HOME: JSON.stringify(pathToFileURL(home).href) },
    logLevel: "silent",
  });
  try {
    renameSync(beside, folder);
  } catch (cause) {
    rmSync(beside, { recursive: true, force: true });
    if (!existsSync(folder)) throw cause;
  }
  forgetOld();
}

function forgetOld() {
  for (const name of readdirSync(keptIn)) {
    const path = join(keptIn, name);
    if (Date.now() - statSync(path).mtimeMs > week) rmSync(path, { recursive: true, force: true });
  }
}
