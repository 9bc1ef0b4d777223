/** Builds beside the site and swaps at the end, so that a failed or killed build leaves the last good site whole. */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";

/** Every site that we built holds this file; nothing else is ever replaced. */
export const marker = "built-by-benchwright.txt";

/** The folder can't be used: it holds something that we did not build. */
export class TargetRefused extends Error {}

/**
 * Calls `fill` with a fresh folder beside `target` and then puts that folder in the target's place. Where `fill` throws,
 * or calls what it is given second, the target stays as it was. The swap is two renames; a build killed between them leaves the old site under
 * `<target>.old`, from which the next call restores it. Throws TargetRefused for a folder that we did not build.
 */
export async function swapIn<Result>(
  target: string,
  fill: (beside: string, leave: () => void) => Promise<Result>,
): Promise<Result> {
  const site = resolve(target);
  const old = `${site}.old`;
  if (!existsSync(site) && existsSync(join(old, marker))) renameSync(old, site);
  refuseForeign(site);
  clearLeftovers(site);
  const beside = `${site}.building-${process.pid}`;
  mkdirSync(beside, { recursive: true });
  try {
    let isLeft = false;
    const result = await fill(beside, () => {
      isLeft = true;
    });
    if (isLeft) return result;
    writeFileSync(
      join(beside, marker),
      "This folder is made anew by each build. Whatever else is put here is lost.\n",
    );
    swap(beside, site, old);
    return result;
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

function refuseForeign(site: string): void {
  if (!existsSync(site)) return;
  if (!statSync(site).isDirectory()) throw new TargetRefused(`${site} is not a folder`);
  if (readdirSync(site).length === 0 || existsSync(join(site, marker))) return;
  throw new TargetRefused(`${site} holds files that no build has made; give an empty or new folder`);
}

function swap(beside: string, site: string, old: string): void {
  rmSync(old, { recursive: true, force: true });
  if (existsSync(site)) renameSync(site, old);
  renameSync(beside, site);
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
