/** The program in the language of the programme on which it is to work. */
import { resolve } from "node:path";
import { language } from "../engine/words.ts";
import { languageOf, wordsOf } from "../words/languages.ts";

/** "this" for the program that runs; another one by its URL; or why there is none. */
type Program = "this" | { readonly url: string } | { readonly fault: string };

/**
 * The program for the language of the content folder that the arguments name: this one for English, where it has been compiled
 * for a language already, and where the words have faults, which it then tells.
 */
export async function programFor(args: readonly string[]): Promise<Program> {
  if (language !== "en-GB") return "this";
  const contentDir = contentDirOf(args);
  const words = wordsOf(languageOf(contentDir), contentDir);
  if (words === undefined) return "this";
  try {
    const { toolKept, makeTool } = await import("./tool-in-language.ts");
    const kept = toolKept(words);
    // It was made of these words, so they are sound.
    if (kept !== undefined) return { url: kept };
    const { isSound } = await import("../words/check.ts");
    if (!isSound(contentDir)) return "this";
    return { url: await makeTool(words) };
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    return {
      fault: `The program can't be made ready for the language "${words.language}": ${why}\nIt is kept in .cache/tool beside the program, which must be writable once. Whoever changes the program: npx tsx src/words/update.ts brings words/ up to date.`,
    };
  }
}

function contentDirOf(args: readonly string[]): string {
  const at = args.indexOf("--content");
  const joined = args.find((arg) => arg.startsWith("--content="))?.slice("--content=".length);
  return resolve((at === -1 ? joined : args[at + 1]) ?? "content");
}
