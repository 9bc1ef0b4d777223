/** Which language a programme speaks, and the catalogues for it: the tool's own and one that the programme brings. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { toolFolder } from "../tool-folder.ts";

/** A catalogue as it lies in a folder. */
export interface WordsFile {
  /** As it is told to people: relative to the content folder or to the tool. */
  readonly path: string;
  readonly text: string;
}

/** The words of a language other than English. */
export interface Words {
  /** As programme.yaml has it. */
  readonly language: string;
  /** Those of the programme first: what they have goes before the tool's. */
  readonly files: readonly WordsFile[];
}

/** The language that programme.yaml names; "en" where it names none or can't be read, of which others speak. */
export function languageOf(contentDir: string): string {
  const file = join(contentDir, "programme.yaml");
  const text = existsSync(file) ? readFileSync(file, "utf8") : "";
  return /^language:\s*["']?([A-Za-z0-9-]+)/m.exec(text)?.[1] ?? "en";
}

/** The catalogue's file names that fit a language, the closest first: `de-at`, `de`. */
const namesOf = (language: string): string[] => {
  const parts = language.toLowerCase().split("-");
  return parts.map((_, at) => parts.slice(0, parts.length - at).join("-"));
};

/** The words of a language: undefined for English, and no files for a language that nobody has a catalogue of. */
export function wordsOf(language: string, contentDir: string): Words | undefined {
  const folders = [
    { folder: join(contentDir, "words"), path: "words" },
    { folder: toolFolder("words"), path: "words" },
  ];
  const files = folders.flatMap(({ folder, path }) =>
    namesOf(language)
      .map((name) => ({ file: join(folder, `${name}.po`), path: `${path}/${name}.po` }))
      .filter(({ file }) => existsSync(file))
      .slice(0, 1)
      .map(({ file, path }) => ({ path, text: readFileSync(file, "utf8") })),
  );
  return files.length === 0 && /^en(-|$)/i.test(language) ? undefined : { language, files };
}

/** Languages that there are: English, and those with a catalogue. */
export function languagesKnown(contentDir: string): string[] {
  const names = [join(contentDir, "words"), toolFolder("words")]
    .filter((folder) => existsSync(folder))
    .flatMap((folder) => readdirSync(folder))
    .filter((name) => name.endsWith(".po"))
    .map((name) => name.slice(0, -".po".length));
  return [...new Set(["en", ...names])].sort();
}
