/**
 * Changes a site that stands by the files that have changed. Once all of them are written beside it and listed, the change
 * holds: a build that is killed while it puts them in place is finished by the next one.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { filesBelow } from "./files-below.ts";

/** Lists what is to go. A folder of changes without it is not whole. */
const list = "built-by-benchwright.gone.json";

const changesFor = (site: string): string => `${site}.changes`;

/**
 * Moves every file of `beside` to its place in the site and takes the files of `gone` away. O(files of `beside` and `gone`),
 * however large the site is.
 */
export function update(beside: string, site: string, gone: readonly string[]): void {
  writeFileSync(join(beside, list), JSON.stringify(gone));
  rmSync(changesFor(site), { recursive: true, force: true });
  renameSync(beside, changesFor(site));
  finish(site);
}

/** Finishes what a killed build began. What can't be finished is dropped: the next site is made as a whole then. */
export function finishUpdate(site: string): void {
  if (!existsSync(changesFor(site))) return;
  try {
    if (existsSync(site) && existsSync(join(changesFor(site), list))) finish(site);
  } finally {
    rmSync(changesFor(site), { recursive: true, force: true });
  }
}

function finish(site: string): void {
  const from = changesFor(site);
  const gone = JSON.parse(readFileSync(join(from, list), "utf8")) as string[];
  for (const path of inOrder(filesBelow(from).filter((each) => each !== list))) {
    mkdirSync(dirname(join(site, path)), { recursive: true });
    renameSync(join(from, path), join(site, path));
  }
  for (const path of gone) remove(site, path);
  rmSync(from, { recursive: true, force: true });
}

/** Assets first, so that no page names one that is not there yet. */
const inOrder = (paths: readonly string[]): string[] => {
  const isAsset = (path: string) => path.startsWith("assets");
  return [...paths.filter(isAsset), ...paths.filter((path) => !isAsset(path))];
};

/** With the folders that are empty then. */
function remove(site: string, path: string): void {
  rmSync(join(site, path), { force: true });
  for (let folder = dirname(path); folder !== "."; folder = dirname(folder)) {
    try {
      rmdirSync(join(site, folder));
    } catch {
      return;
    }
  }
}
