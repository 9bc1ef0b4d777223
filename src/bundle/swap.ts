/** Builds beside the site and puts it in place at the end, so that a failed or killed build leaves the last good site whole. */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { filesBelow } from "./files-below.ts";
import { finishUpdate, update } from "./update.ts";

/** Every site that we built holds this file; nothing else is ever replaced. */
export const marker = "built-by-benchwright.txt";

/** The folder can't be used: it holds something that we did not build. */
export class TargetRefused extends Error {}

/** The site that was put in place last, and its files once they have been asked for. */
export interface Standing {
  siteDir?: string | undefined;
  files?: ReadonlySet<string> | undefined;
}

/** What becomes of the folder that was filled, where it is not put in the site's place. */
export interface Otherwise {
  /** Nothing: the site stays as it was. */
  leave(): void;
  /** Its files are put among those of the site, of which these stay, and no others. */
  update(staying: readonly string[]): void;
}

/**
 * Calls `fill` with a fresh folder beside `target` and then puts that folder in the target's place, or does otherwise. Where
 * `fill` throws, the target stays as it was. The swap is two renames; a build killed between them leaves the old site under
 * `<target>.old`, from which the next call restores it. Throws TargetRefused for a folder that we did not build.
 */
export async function swapIn<Result>(
  target: string,
  fill: (beside: string, otherwise: Otherwise) => Promise<Result>,
  standing: Standing = {},
): Promise<Result> {
  const site = resolve(target);
  makeWhole(site);
  refuseForeign(site);
  clearLeftovers(site);
  const beside = `${site}.building-${process.pid}`;
  mkdirSync(beside, { recursive: true });
  try {
    let end: () => void = () => swap(beside, site, standing);
    const result = await fill(beside, {
      leave() {
        end = () => undefined;
      },
      update(staying) {
        end = () => change(beside, site, staying, standing);
      },
    });
    end();
    return result;
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

/** True where the site is the one that stood in the end of the last call with the same `standing`. */
export function stillStands(target: string, { siteDir }: Standing): boolean {
  const site = resolve(target);
  return siteDir === site && existsSync(join(site, marker));
}

/** Undoes half a swap, and finishes half a change. */
function makeWhole(site: string): void {
  const old = `${site}.old`;
  if (!existsSync(site) && existsSync(join(old, marker))) renameSync(old, site);
  finishUpdate(site);
}

function change(beside: string, site: string, staying: readonly string[], standing: Standing): void {
  const before = standing.files ?? new Set(filesBelow(site));
  // Until the change is made, nobody relies on what stands.
  forget(standing);
  const files = new Set([...staying, ...filesBelow(beside), marker]);
  update(
    beside,
    site,
    [...before].filter((file) => !files.has(file)),
  );
  Object.assign(standing, { siteDir: site, files } satisfies Standing);
}

function forget(standing: Standing): void {
  Object.assign(standing, { siteDir: undefined, files: undefined } satisfies Standing);
}

function refuseForeign(site: string): void {
  if (!existsSync(site)) return;
  if (!statSync(site).isDirectory()) throw new TargetRefused(`${site} is not a folder`);
  if (readdirSync(site).length === 0 || existsSync(join(site, marker))) return;
  throw new TargetRefused(`${site} holds files that no build has made; give an empty or new folder`);
}

function swap(beside: string, site: string, standing: Standing): void {
  const old = `${site}.old`;
  forget(standing);
  writeFileSync(
    join(beside, marker),
    "This folder is made anew by each build. Whatever else is put here is lost.\n",
  );
  rmSync(old, { recursive: true, force: true });
  if (existsSync(site)) renameSync(site, old);
  renameSync(beside, site);
  standing.siteDir = site;
  rmSync(old, { recursive: true, force: true });
}

/** Folders of builds that were killed. A build that is still running keeps its own. */
function clearLeftovers(site: string): void {
  const prefix = `${basename(site)}.building-`;
  if (!existsSync(dirname(site))) return;
  for (const name of readdirSync(dirname(site))) {
    if (name.startsWith(prefix) && !isRunning(Number(name.slice(prefix.length)))) {
      rmSync(join(dirname(site), name), { recursive: true, force: true });
    }
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return (cause as NodeJS.ErrnoException).code === "EPERM";
  }
}
