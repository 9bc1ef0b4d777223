import { readdirSync } from "node:fs";
import { join } from "node:path";
import { BadInput } from "./command.ts";

/** Paths of all files below a folder whose names end so, sorted. Throws a BadInput where the folder can't be read. */
export function filesIn(folder: string, endings: readonly string[]): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => !entry.isDirectory() && endings.some((ending) => entry.name.endsWith(ending)))
      .map((entry) => join(entry.parentPath, entry.name))
      .sort();
  } catch (cause) {
    throw new BadInput(
      `${folder}: can't be read (${cause instanceof Error ? cause.message : String(cause)})`,
    );
  }
}
