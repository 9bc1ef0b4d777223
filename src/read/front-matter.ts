/** Splits a Markdown file into front matter and body. Only YAML is read: other languages of front matter can run code. */
import matter from "gray-matter";
import type { Code } from "../model/codes.ts";

export interface Split {
  readonly front: string;
  readonly frontOffset: number;
  readonly bodyOffset: number;
}

export interface SplitFault {
  readonly code: Extract<Code, "front-matter-missing" | "front-matter-language">;
  readonly message: string;
}

const refuse = (): never => {
  throw new Error("refused");
};

/** gray-matter only splits here; the YAML is parsed by us, so that its places are known. `eval` engines are replaced. */
const engines = {
  yaml: () => ({}),
  json: refuse,
  js: refuse,
  javascript: refuse,
  coffee: refuse,
  toml: refuse,
};

/** Splits `text`; a fault where there is no front matter or it is not YAML. */
export function splitFrontMatter(text: string): Split | SplitFault {
  const opening = /^---([^\r\n]*)\r?\n/.exec(text);
  if (opening === null) return { code: "front-matter-missing", message: "the file does not begin with ---" };
  const language = opening[1]!.trim();
  if (language !== "" && language !== "yaml") {
    return {
      code: "front-matter-language",
      message: `the front matter is marked as "${language.slice(0, 40)}"`,
    };
  }
  const { matter: front, content } = matter(text, { engines, language: "yaml" });
  const closed = /^---[ \t]*\r?$/m.test(text.slice(opening[0].length));
  if (!closed)
    return { code: "front-matter-missing", message: "the front matter is not closed by a second ---" };
  return { front, frontOffset: text.indexOf(front, 3), bodyOffset: text.length - content.length };
}
