/** Files that a command leaves behind: a file that was there stays whole until the new one is. */
import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Written beside its place and renamed, so that there is never half of a file. Gives the path. Throws where it can't be written. */
export function writeWhole(folder: string, path: string, text: string): string {
  const file = join(folder, path);
  const beside = `${file}.writing-${process.pid}`;
  mkdirSync(dirname(file), { recursive: true });
  try {
    writeFileSync(beside, text);
    renameSync(beside, file);
  } catch (cause) {
    rmSync(beside, { force: true });
    throw cause;
  }
  return path;
}
