/** A folder as its files. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** The bytes of every file below a folder, in base64, by path. */
export function treeOf(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return new Map(
    files
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((file) => [file.slice(folder.length), readFileSync(file, "base64")]),
  );
}
