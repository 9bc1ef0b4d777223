/**
 * Keeps whole sites by the digest of the content and the tool that made them. Lives outside the content and may be deleted
 * at any time. Files are linked, not copied, into one folder an entry: an entry in which any file has been touched since is no longer used.
 */
import {
  copyFileSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { filesBelow } from "./files-below.ts";

interface Entry<Note> {
  readonly note: Note;
  /** Path in the site, size and time of last change of every file; its name in the entry's folder is its place here. */
  readonly files: readonly (readonly [path: string, size: number, changed: number])[];
}

/** Sites kept; the one before the last is there when a change is taken back. */
const kept = 2;

/** Puts the site of a digest into `outDir` and gives the note kept with it; undefined where there is none to be relied on. */
export function restoreSite<Note>(cacheDir: string, digest: string, outDir: string): Note | undefined {
  const folder = join(cacheDir, digest);
  try {
    const { note, files } = JSON.parse(readFileSync(`${folder}.json`, "utf8")) as Entry<Note>;
    const isWhole = files.every(([, size, changed], name) => {
      const stat = statSync(join(folder, String(name)), { throwIfNoEntry: false });
      return stat?.size === size && stat.mtimeMs === changed;
    });
    if (!isWhole) return undefined;
    const made = new Set<string>();
    for (const [name, [path]] of files.entries()) {
      const to = join(outDir, path);
      if (!made.has(dirname(to))) mkdirSync(dirname(to), { recursive: true });
      made.add(dirname(to));
      linkOrCopy(join(folder, String(name)), to);
    }
    return note;
  } catch {
    return undefined;
  }
}

/** Keeps the site in `outDir`. A cache that can't be written is no fault of the build. */
export function keepSite<Note>(cacheDir: string, digest: string, outDir: string, note: Note): void {
  const folder = join(cacheDir, digest);
  try {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
    const files = filesBelow(outDir).map((path, name) => {
      const link = join(folder, String(name));
      linkOrCopy(join(outDir, path), link);
      const { size, mtimeMs } = statSync(link);
      return [path, size, mtimeMs] as const;
    });
    writeFileSync(`${folder}.json`, JSON.stringify({ note, files } satisfies Entry<Note>));
    forgetOthers(cacheDir);
  } catch {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Links don't reach over file systems. A copy has a time of its own, which is what the entry then holds. */
function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}

function forgetOthers(cacheDir: string): void {
  const entries = readdirSync(cacheDir)
    .filter((name) => name.endsWith(".json"))
    .map((name) => ({ name, changed: statSync(join(cacheDir, name)).mtimeMs }))
    .sort((a, b) => b.changed - a.changed);
  for (const { name } of entries.slice(kept)) {
    rmSync(join(cacheDir, name));
    rmSync(join(cacheDir, name.slice(0, -".json".length)), { recursive: true, force: true });
  }
}
