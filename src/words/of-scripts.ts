/** The words of scripts: they speak as the pages do, in the language for which the program was compiled. */
import type { BuildOptions } from "esbuild";
import { wordsOf } from "./languages.ts";

/** What a bundle needs for it; nothing for the language of the source. */
export async function wordsOfScripts(
  language: string,
  contentDir: string,
): Promise<Pick<BuildOptions, "plugins" | "define">> {
  const words = language === "en-GB" ? undefined : wordsOf(language, contentDir);
  return words === undefined ? {} : (await import("./plugin.ts")).bundleOptions(words);
}
