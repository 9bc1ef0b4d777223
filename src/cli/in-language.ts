/** The program in the language of the programme on which it is to work. */
import { resolve } from "node:path";
import { language } from "../engine/words.ts";
import { languageOf, wordsOf } from "../words/languages.ts";

/**
 * The program compiled for the language of the content folder that the arguments name, as a URL to import; undefined where
 * this program is the right one: for English, where it has been compiled for a language already, and where the words
 * have faults, which it then tells.
 */
export async function programFor(args: readonly string[]): Promise<string | undefined> {
  if (language !== "en-GB") return undefined;
  const contentDir = contentDirOf(args);
  const words = wordsOf(languageOf(contentDir), contentDir);
  if (words === undefined) return undefined;
  const { isSound } = await import("../words/check.ts");
  if (!isSound(contentDir)) return undefined;
  const { toolIn } = await import("../words/tool.ts");
  return toolIn(words);
}

function contentDirOf(args: readonly string[]): string {
  const at = args.indexOf("--content");
  const joined = args.find((arg) => arg.startsWith("--content="))?.slice("--content=".length);
  return resolve((at === -1 ? joined : args[at + 1]) ?? "content");
}
