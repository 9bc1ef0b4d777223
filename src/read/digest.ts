/** A digest of everything in a folder: the same for the same names and bytes, and for nothing else. */
import { createHash } from "node:crypto";
import { lstatSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { findFiles } from "./files.ts";

/**
 * SHA-256 over the paths and bytes of all files below the folders, in hexadecimal. Undefined where anything there could
 * not be read or is a link, so that nobody relies on what was not seen.
 */
export function digestOf(folders: readonly string[]): string | undefined {
  const hash = createHash("sha256");
  for (const folder of folders) {
    const { files, faults } = findFiles(folder);
    if (faults.length > 0) return undefined;
    for (const { path } of files) {
      const full = join(folder, path);
      if (!lstatSync(full).isFile()) return undefined;
      const bytes = readFileSync(full);
      hash.update(`${path}\0${bytes.length}\0`).update(bytes);
    }
    hash.update("\0\0");
  }
  return hash.digest("hex");
}
