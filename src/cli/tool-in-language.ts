/** The program compiled for a language: the same code with its words in place. Made once and kept beside the package. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { toolFolder } from "../tool-folder.ts";
import type { Words } from "../words/languages.ts";
import { compile, folderFor } from "./compiled.js";

const home = toolFolder("");

const folderOf = ({ language, files }: Words): string =>
  folderFor(
    home,
    files.map(({ text }) => text),
    `-${language}`,
  );

const entryIn = (folder: string): string => pathToFileURL(join(folder, "main.js")).href;

/** The compiled program, as a URL to import; undefined where it has not been made yet for these words. */
export function toolKept(words: Words): string | undefined {
  const folder = folderOf(words);
  return existsSync(folder) ? entryIn(folder) : undefined;
}

/** Makes it. Rejects where it can't be compiled or kept. */
export async function makeTool(words: Words): Promise<string> {
  const folder = folderOf(words);
  const { bundleOptions } = await import("../words/plugin.ts");
  await compile(home, folder, bundleOptions(words));
  return entryIn(folder);
}
