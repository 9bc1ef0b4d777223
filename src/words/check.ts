/** Whether a programme's language has all its words, and whether what is there fits. */

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Code, codes } from "../model/codes.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { placeAt } from "../model/place.ts";
import { toolFolder } from "../tool-folder.ts";
import { type Catalogue, type Entry, lookUp, readCatalogue } from "./catalogue.ts";
import { languageOf, languagesKnown, type Words, type WordsFile, wordsOf } from "./languages.ts";
import { isWellTagged, keyOf, marksOf } from "./message.ts";

/** How many messages that are missing, or that do not fit, are told one by one. */
const mostTold = 20;

/**
 * The faults of a programme's words: a language that nobody has words of, a catalogue that can't be read, messages without a
 * translation, translations that lose or invent a placeholder or a tag. `texts` has the content's files, for the place in
 * programme.yaml. Reads catalogues, and nothing for English.
 */
export function checkWords(contentDir: string, texts: ReadonlyMap<string, string>): Diagnostic[] {
  const language = languageOf(contentDir);
  const words = wordsOf(language, contentDir);
  if (words === undefined) return [];
  if (words.files.length === 0) return [unknownLanguage(language, contentDir, texts)];
  const read = words.files.map(readFile);
  const broken = read.flatMap(({ faults }) => faults);
  if (broken.length > 0) return broken;
  const needed = readCatalogue(readFileSync(join(toolFolder("words"), "en.pot"), "utf8"));
  const catalogues = read.map(({ catalogue }) => catalogue);
  const misfits = read.flatMap(({ file, catalogue }) => misfitsIn(file, catalogue, needed, language));
  return [...limited(missingIn(words, catalogues, needed)), ...limited(misfits)];
}

/** True where nothing is wrong with the words, so that code can be compiled with them. */
export const isSound = (contentDir: string): boolean => checkWords(contentDir, new Map()).length === 0;

function unknownLanguage(
  language: string,
  contentDir: string,
  texts: ReadonlyMap<string, string>,
): Diagnostic {
  const text = texts.get("programme.yaml") ?? "";
  const known = languagesKnown(contentDir).join(", ");
  const at = /^language:\s*/m.exec(text);
  return told(
    "unknown-language",
    "programme.yaml",
    text,
    at === null ? 0 : at.index + at[0].length,
    `there are no words in "${language}"; there are ${known}`,
  );
}

function readFile(file: WordsFile): { file: WordsFile; catalogue: Catalogue; faults: Diagnostic[] } {
  try {
    return { file, catalogue: readCatalogue(file.text), faults: [] };
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    const fault = told("words-unreadable", file.path, file.text, 0, `this is no catalogue: ${why}`);
    return { file, catalogue: new Map(), faults: [fault] };
  }
}

function missingIn({ files }: Words, catalogues: readonly Catalogue[], needed: Catalogue): Diagnostic[] {
  const translate = lookUp(catalogues);
  // The last is the tool's own where it has one: the programme's need hold only what it says otherwise.
  const { path, text } = files.at(-1)!;
  return [...needed.values()]
    .filter((message) => translate(message) === undefined)
    .map((message) =>
      told(
        "word-missing",
        path,
        text,
        placeIn(text, message),
        `"${shortened(message.id)}" has no translation (${message.where[0] ?? "not placed"})`,
      ),
    );
}

function misfitsIn(file: WordsFile, catalogue: Catalogue, needed: Catalogue, language: string): Diagnostic[] {
  const kinds = new Intl.PluralRules(language).resolvedOptions().pluralCategories.length;
  return [...catalogue.values()]
    .filter((entry) => needed.has(keyOf(entry)) && entry.translation.some((form) => form !== ""))
    .flatMap((entry) => {
      const fault = misfit(entry, needed.get(keyOf(entry))!, kinds);
      return fault === undefined
        ? []
        : [
            told(
              "word-placeholders",
              file.path,
              file.text,
              placeIn(file.text, entry),
              `"${shortened(entry.id)}": ${fault}`,
            ),
          ];
    });
}

/** What is wrong with a translation; undefined where it fits. `kinds` is how many kinds of number the language has. */
function misfit({ translation }: Entry, { id, plural }: Entry, kinds: number): string | undefined {
  if (plural !== "" && translation.length !== kinds && translation.length !== kinds - 1)
    return `it has ${translation.length} forms, and the language has ${kinds} kinds of number`;
  const wanted = [id, plural].filter((text) => text !== "").map((text) => marksOf(text).join(" "));
  for (const form of translation) {
    const marks = marksOf(form).join(" ");
    if (!wanted.includes(marks))
      return `it has ${marks || "no marks"} where English has ${wanted[0] || "none"}`;
    if (!isWellTagged(form)) return "its tags do not close one another";
  }
  return undefined;
}

const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 79)}…` : text);

/** Where a message stands in a catalogue; its beginning where it is not there. */
function placeIn(text: string, { id }: { readonly id: string }): number {
  return Math.max(0, text.indexOf(`msgid ${JSON.stringify(id)}`));
}

function limited(found: readonly Diagnostic[]): Diagnostic[] {
  if (found.length <= mostTold) return [...found];
  const last = found[mostTold - 1]!;
  const more = ` And ${found.length - mostTold} more like this.`;
  return [...found.slice(0, mostTold - 1), { ...last, message: last.message + more }];
}

function told(code: Code, file: string, text: string, offset: number, message: string): Diagnostic {
  const { severity, mend } = codes[code];
  return { code, severity, ...placeAt(file, text, offset), message: `${message}. ${mend}`, other: undefined };
}
