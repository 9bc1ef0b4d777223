import { readdirSync } from "node:fs";
import { join } from "node:path";

/** Paths of all files below a folder, relative to it. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1));
}
