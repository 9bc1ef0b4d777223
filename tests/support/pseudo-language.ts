/** A language made on the fly, in which each message of the tool stands in brackets: ⟦Modules⟧. What stands in none is marked nowhere. */
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { po } from "gettext-parser";
import { jsonSchemas } from "../../src/validate/schema/index.ts";
import { allMessages } from "../../src/words/extract.ts";
import { potOf } from "../../src/words/pot.ts";

/** The tag by which CLDR calls English in disguise; its numbers and dates are English. */
const pseudo = "en-XA";

/** The catalogue of the pseudo-language, made of the list of all messages. */
export function pseudoCatalogue(): Uint8Array {
  const file = po.parse(potOf(allMessages()));
  for (const entry of Object.values(file.translations).flatMap((each) => Object.values(each))) {
    const forms = [entry.msgid, ...(entry.msgid_plural === undefined ? [] : [entry.msgid_plural])];
    if (entry.msgid !== "") entry.msgstr = forms.map(bracketed);
  }
  return po.compile(file, { foldLength: 0 });
}

/** What is put into a message stays outside, so that it has to have brackets of its own. */
const bracketed = (text: string): string =>
  text
    .split(/(\{\d+\})/)
    .map((piece, at) =>
      at % 2 === 1 || !/\p{L}/u.test(piece.replace(/<[^>]*>/g, "")) ? piece : `⟦${piece}⟧`,
    )
    .join("");

/** Copies a content folder and lets it speak the pseudo-language. */
export function copyInPseudo(content: string, to: string): void {
  cpSync(content, to, { recursive: true });
  mkdirSync(join(to, "words"), { recursive: true });
  writeFileSync(join(to, "words/en-xa.po"), pseudoCatalogue());
  const programme = join(to, "programme.yaml");
  writeFileSync(programme, readFileSync(programme, "utf8").replace(/^language: .*$/m, `language: ${pseudo}`));
}

const wordPattern = /\p{L}{2,}/gu;
const wordsIn = (text: string): string[] => text.match(wordPattern) ?? [];

const folded = (word: string): string => word.toLocaleLowerCase("en");

/** The words of a content folder, without those that are names of fields or values which the tool knows. */
export function wordsOfContent(folder: string): ReadonlySet<string> {
  const texts = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(md|yaml|svg)$/.test(name))
    .map((name) => readFileSync(join(folder, name), "utf8"));
  const known = new Set(knownNames(Object.fromEntries(jsonSchemas())).flatMap(wordsIn));
  return new Set(
    texts
      .flatMap(wordsIn)
      .filter((word) => !known.has(word))
      .map(folded),
  );
}

/** Keys and fixed values of the schemas. */
function knownNames(schema: unknown): string[] {
  if (Array.isArray(schema)) return schema.flatMap(knownNames);
  if (typeof schema !== "object" || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) => {
    if (key === "description" || key === "title") return [];
    if (key === "properties")
      return [...Object.keys(value as object), ...knownNames(Object.values(value as object))];
    if (key === "enum" || key === "const") return [value].flat().filter((each) => typeof each === "string");
    return knownNames(value);
  });
}

/** What stands outside all brackets, piece by piece; brackets may lie in one another. */
export function outsideBrackets(text: string): string {
  let depth = 0;
  let outside = "";
  for (const sign of text) {
    if (sign === "⟦") depth++;
    else if (sign === "⟧") {
      depth = Math.max(0, depth - 1);
      outside += " ";
    } else if (depth === 0) outside += sign;
  }
  return outside;
}

/** The words in a text that stand in no bracket, are none of the content and are not let through. */
export function unmarkedWords(
  text: string,
  content: ReadonlySet<string>,
  letThrough: readonly RegExp[],
): string[] {
  const rest = letThrough.reduce((left, pattern) => left.replace(pattern, " "), outsideBrackets(text));
  return wordsIn(rest).filter((word) => !content.has(folded(word)));
}
