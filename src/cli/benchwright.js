#!/usr/bin/env node
// Where the program begins: Node 20 can't start a TypeScript file. It compiles the tool once, keeps that beside
// the package and starts it from there; where nothing can be written it has each file compiled as it is loaded.
import { existsSync, readdirSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { compile, folderFor, keptIn } from "./compiled.js";

const home = fileURLToPath(new URL("../..", import.meta.url));
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
  const folder = folderFor(home);
  if (!existsSync(folder)) {
    await compile(home, folder);
    forgetOld();
  }
  return join(folder, "main.js");
}

function forgetOld() {
  for (const name of readdirSync(keptIn(home))) {
    const path = join(keptIn(home), name);
    if (Date.now() - statSync(path).mtimeMs > week) rmSync(path, { recursive: true, force: true });
  }
}
