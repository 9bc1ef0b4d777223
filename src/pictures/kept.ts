/**
 * Made pictures, kept by the digest of what they were made from. Lives outside the content and may be deleted at any time.
 */
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { extname, join } from "node:path";
import sharp from "sharp";
import type { MadeBytes } from "./raster.ts";

/** To be raised when pictures are made in another way. */
const way = 1;

/** What was not used for so long goes. */
const keptDays = 60;

/** An entry is a folder of its files by number, with their names behind the picture's own in the order of the numbers. */
const list = "files.json";

/** The name of an entry: the bytes, the kind that its name asks for, and what makes it. */
export const keyOf = (digest: string, file: string): string =>
  `${digest.slice(0, 32)}-${way}-${sharp.versions.vips}${extname(file).toLowerCase()}`;

/** Undefined where the entry is not there or not whole. `file` is the picture's path now. */
export function keptPicture(cacheDir: string, key: string, file: string): MadeBytes[] | undefined {
  const folder = join(cacheDir, key);
  try {
    const names = JSON.parse(readFileSync(join(folder, list), "utf8")) as (readonly [string, number])[];
    const made = names.map(([behind, size], at) => {
      const bytes = readFileSync(join(folder, String(at)));
      if (bytes.length !== size) throw new Error(`${behind} is not whole`);
      return { file: `${file}${behind}`, bytes };
    });
    const now = new Date();
    utimesSync(join(folder, list), now, now);
    return made;
  } catch {
    return undefined;
  }
}

/** A cache that can't be written is no fault of the build. */
export function keepPicture(cacheDir: string, key: string, file: string, made: readonly MadeBytes[]): void {
  const beside = join(cacheDir, `${key}.writing-${process.pid}`);
  try {
    rmSync(beside, { recursive: true, force: true });
    mkdirSync(beside, { recursive: true });
    for (const [at, { bytes }] of made.entries()) writeFileSync(join(beside, String(at)), bytes);
    const names = made.map((each) => [each.file.slice(file.length), each.bytes.length]);
    writeFileSync(join(beside, list), JSON.stringify(names));
    rmSync(join(cacheDir, key), { recursive: true, force: true });
    renameSync(beside, join(cacheDir, key));
  } catch {
    rmSync(beside, { recursive: true, force: true });
  }
}

/** Takes away what nobody has asked for in a long time. */
export function forgetOld(cacheDir: string, now = Date.now()): void {
  try {
    for (const name of readdirSync(cacheDir)) {
      const used = statSync(join(cacheDir, name, list), { throwIfNoEntry: false })?.mtimeMs ?? 0;
      if (now - used > keptDays * 86_400_000) rmSync(join(cacheDir, name), { recursive: true, force: true });
    }
  } catch {
    // There is none yet.
  }
}
