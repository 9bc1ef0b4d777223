/** Catalogues as text. */
import { type PoEntry, type PoFile, po } from "gettext-parser";
import type { Found } from "./extract.ts";

/** The list of all messages, without translations. */
export function potOf(messages: readonly Found[]): string {
  const headers = {
    "Project-Id-Version": "Benchwright",
    "Content-Type": "text/plain; charset=UTF-8",
    "Content-Transfer-Encoding": "8bit",
  };
  return written({ charset: "utf-8", headers, translations: {} }, messages, () => undefined);
}

/** A catalogue with exactly these messages; it keeps its translations, comments and header. */
export function mergedPo(text: string, messages: readonly Found[]): string {
  const before = po.parse(text);
  return written(before, messages, ({ context, id }) => before.translations[context]?.[id]);
}

function written(
  file: PoFile,
  messages: readonly Found[],
  kept: (message: Found) => PoEntry | undefined,
): string {
  const translations: PoFile["translations"] = {};
  const header = file.translations[""]?.[""];
  if (header !== undefined) translations[""] = { "": header };
  for (const message of messages) {
    const { context, id, plural, where } = message;
    const old = kept(message);
    const entry: PoEntry = {
      ...(context === "" ? {} : { msgctxt: context }),
      msgid: id,
      ...(plural === "" ? {} : { msgid_plural: plural }),
      msgstr: old?.msgstr ?? (plural === "" ? [""] : ["", ""]),
      comments: { ...old?.comments, reference: where.join("\n") },
    };
    translations[context] = { ...translations[context], [id]: entry };
  }
  const bytes = po.compile({ ...file, translations }, { foldLength: 0 });
  return `${new TextDecoder().decode(bytes).trimEnd()}\n`;
}
