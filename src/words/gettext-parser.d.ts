/** What is used of gettext-parser, which ships no types. */
declare module "gettext-parser" {
  export interface PoEntry {
    msgctxt?: string;
    msgid: string;
    msgid_plural?: string;
    msgstr: string[];
    comments?: {
      translator?: string;
      reference?: string;
      extracted?: string;
      flag?: string;
      previous?: string;
    };
  }

  export interface PoFile {
    charset: string;
    headers: Record<string, string>;
    translations: Record<string, Record<string, PoEntry>>;
  }

  export const po: {
    /** Throws a SyntaxError for what is no PO file. */
    parse(text: string | Uint8Array, options?: { validation?: boolean }): PoFile;
    compile(file: PoFile, options?: { foldLength?: number; sort?: boolean }): Uint8Array;
  };
}
