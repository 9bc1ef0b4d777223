/** Reads a catalogue: a gettext PO file, whose ids are the English texts. */
import { po } from "gettext-parser";
import { keyOf, type Message, type Translate, type Translation } from "./message.ts";

export interface Entry extends Message {
  /** Empty texts where a form is not translated yet. */
  readonly translation: Translation;
  /** Guessed by a program and not looked at: counts as not translated, as gettext has it. */
  readonly isFuzzy: boolean;
  /** Files in which the message stands. */
  readonly where: readonly string[];
}

/** By the key of the message. */
export type Catalogue = ReadonlyMap<string, Entry>;

/** Reads a PO file. Throws an error that says in words what is wrong with it. */
export function readCatalogue(text: string): Catalogue {
  const { translations, headers } = po.parse(text);
  const charset = /charset=([\w-]+)/i.exec(headers["Content-Type"] ?? headers["content-type"] ?? "")?.[1];
  if (charset !== undefined && !/^(utf-?8|charset)$/i.test(charset))
    throw new Error(`its header says charset=${charset}; expected UTF-8`);
  const entries = new Map<string, Entry>();
  for (const context of Object.values(translations)) {
    for (const { msgctxt = "", msgid, msgid_plural = "", msgstr, comments } of Object.values(context)) {
      if (msgid === "") continue;
      const message = { context: msgctxt, id: msgid, plural: msgid_plural };
      entries.set(keyOf(message), {
        ...message,
        translation: msgstr,
        isFuzzy: /\bfuzzy\b/.test(comments?.flag ?? ""),
        where: (comments?.reference ?? "").split("\n").filter((file) => file !== ""),
      });
    }
  }
  return entries;
}

const isTold = ({ isFuzzy, translation }: Entry): boolean =>
  !isFuzzy && translation.length > 0 && translation.every((form) => form !== "");

/** Looks messages up: in the first catalogue that has a translation. */
export function lookUp(catalogues: readonly Catalogue[]): Translate {
  return (message) => {
    const key = keyOf(message);
    const entry = catalogues.map((each) => each.get(key)).find((each) => each !== undefined && isTold(each));
    return entry?.translation;
  };
}
