/** Makes a built site one that is kept on a device: the list of its files, and the worker that keeps them. */
import { readFile, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import type * as esbuild from "esbuild";
import { type Edition, type EditionFile, editionFile, workerFile } from "../model/edition.ts";
import { carriedFiles } from "../model/picture-files.ts";
import { digestOf } from "./edition-digest.ts";
import { filesBelow } from "./files-below.ts";
import { oneScript } from "./one-script.ts";

export interface OfflineOptions {
  /** The built site, with all else that belongs to it. */
  readonly outDir: string;
  readonly browserDir: string;
  /** Files that were listed as they were written, and are not read again. */
  readonly listed?: readonly EditionFile[];
  /** What puts the words of another language than English into the script. */
  readonly words?: Pick<esbuild.BuildOptions, "plugins" | "define">;
}

/** Writes both. Whatever is put into the folder afterwards is not kept on devices. */
export async function writeOffline(options: OfflineOptions): Promise<void> {
  const { outDir } = options;
  const script = await oneScript(join(options.browserDir, "worker", "worker.ts"), options.words);
  const text = editionText(await listFiles(outDir, options.listed));
  const version = digestOf(text);
  await writeFile(join(outDir, editionFile(version)), text);
  await writeFile(join(outDir, workerFile), `self.benchwrightEdition=${JSON.stringify(version)};\n${script}`);
}

/** The list as it is written: the same files give the same text. */
export const editionText = (files: readonly EditionFile[]): string =>
  `${JSON.stringify({ files } satisfies Edition)}\n`;

/** So many files are open at a time. */
const together = 32;

/**
 * Every file below a folder, by path; hidden ones are not part of a site. Of a picture in several sizes one is listed, or an
 * edition with photographs would be three times as large. O(bytes of those that are not `known`).
 */
export async function listFiles(folder: string, known: readonly EditionFile[] = []): Promise<EditionFile[]> {
  const before = new Map(known.map((file) => [file[0], file]));
  const all = filesBelow(folder)
    .filter((path) => !basename(path).startsWith("."))
    .map((path) => path.replaceAll("\\", "/"));
  const paths = [...carriedFiles(all)].sort();
  const files: EditionFile[] = [];
  for (let at = 0; at < paths.length; at += together) {
    const some = paths.slice(at, at + together);
    files.push(...(await Promise.all(some.map((path) => before.get(path) ?? listed(folder, path)))));
  }
  return files;
}

async function listed(folder: string, path: string): Promise<EditionFile> {
  const bytes = await readFile(join(folder, path));
  return [path, digestOf(bytes), bytes.length];
}
