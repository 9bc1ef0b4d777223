/** Finds the files of a content folder. Symbolic links are followed only to files inside it. */
import { existsSync, lstatSync, readdirSync, realpathSync, type Stats, statSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import type { Code } from "../model/codes.ts";

export interface FoundFile {
  /** Relative to the content folder, with forward slashes. */
  readonly path: string;
  readonly size: number;
  /** When its bytes or what is said of them last changed: two files with the same figure and size hold the same. */
  readonly changed: string;
}

export interface FileFault {
  readonly code: Extract<Code, "no-content" | "leaves-content" | "unreadable" | "folder-without-module">;
  readonly path: string;
  readonly message: string;
}

/** All files below `folder`, sorted by path, and the folders that hold them; hidden ones and node_modules are passed over. */
export function findFiles(folder: string): { files: FoundFile[]; folders: string[]; faults: FileFault[] } {
  const files: FoundFile[] = [];
  const folders: string[] = [];
  const faults: FileFault[] = [];
  const root = realRoot(folder, faults);
  const waiting = root === undefined ? [] : [root];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const name of readdirSync(at)) {
      if (name.startsWith(".") || name === "node_modules") continue;
      const full = join(at, name);
      const path = relative(root!, full).split(sep).join("/");
      const entry = look(full, path, root!, faults);
      if (entry === "folder") {
        folders.push(path);
        waiting.push(full);
      } else if (entry !== undefined) files.push({ path, ...entry });
    }
  }
  return { files: files.sort((a, b) => (a.path < b.path ? -1 : 1)), folders, faults };
}

function realRoot(folder: string, faults: FileFault[]): string | undefined {
  try {
    const root = realpathSync(folder);
    readdirSync(root);
    return root;
  } catch {
    // Called from within the content folder, the tool looks one folder too deep.
    const above = dirname(folder);
    const instead = existsSync(join(above, "programme.yaml")) ? `; ${above} holds a programme.yaml` : "";
    faults.push({
      code: "no-content",
      path: folder,
      message: `there is no readable folder ${folder}${instead}`,
    });
    return undefined;
  }
}

type Look = Pick<FoundFile, "size" | "changed">;

const lookOf = ({ size, mtimeMs, ctimeMs, ino }: Stats): Look => ({
  size,
  changed: `${mtimeMs} ${ctimeMs} ${ino}`,
});

/** What there is to know of a file without opening it, "folder", or undefined with a fault. */
function look(full: string, path: string, root: string, faults: FileFault[]): Look | "folder" | undefined {
  try {
    const entry = lstatSync(full);
    if (entry.isDirectory()) return "folder";
    if (entry.isFile()) return lookOf(entry);
    if (!entry.isSymbolicLink()) throw new Error("it is neither a file nor a folder");
    const target = realpathSync(full);
    if (!target.startsWith(root + sep)) {
      faults.push({
        code: "leaves-content",
        path,
        message: "this symbolic link leads out of the content folder",
      });
      return undefined;
    }
    const led = statSync(full);
    if (!led.isFile()) throw new Error("it is a symbolic link to a folder");
    return lookOf(led);
  } catch (cause) {
    faults.push({
      code: "unreadable",
      path,
      message: cause instanceof Error ? cause.message : String(cause),
    });
    return undefined;
  }
}

/** Folders of modules without a module. One that holds a quiz is spoken of there. */
export function emptyModules({ files, folders, faults }: ReturnType<typeof findFiles>): FileFault[] {
  const there = new Set([...files, ...faults].map(({ path }) => path));
  return folders
    .filter((path) => /^modules\/[^/]+$/.test(path))
    .filter((path) => !there.has(`${path}/module.md`) && !there.has(`${path}/quiz.yaml`))
    .map((path) => ({ code: "folder-without-module", path, message: "this folder has no module.md" }));
}
