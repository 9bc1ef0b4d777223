/** Files of the content folder that the tool itself writes. */
import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Written beside its place and renamed, so that there is never half of a file. Gives the path. */
export function writeWhole(folder: string, path: string, text: string): string {
  const file = join(folder, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(`${file}.${process.pid}`, text);
  renameSync(`${file}.${process.pid}`, file);
  return path;
}
