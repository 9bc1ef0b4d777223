/** A run of inline HTML as a message, and a translation of it as HTML again. */
import { fillHoles, hole } from "./holes.ts";
import type { Inline } from "./html-text.ts";

/** A run of a template as a message's text, with what its numbers stand for. */
export interface Run {
  readonly start: number;
  readonly end: number;
  readonly id: string;
  /** The translation as it goes into the template in place of the run. */
  fill(translation: string): string;
}

/** White space at the ends stays outside; within, it is one blank. */
export function htmlRun(run: readonly Inline[], template: string): Run {
  const writer = new Writer(template);
  const text = writer.text(run);
  const start = run[0]!.start;
  const end = run.at(-1)!.end;
  const [, before = "", id = "", after = ""] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text)!;
  const raw = template.slice(start, end);
  const lead = before === "" ? 0 : /^\s*/.exec(raw)![0].length;
  const trail = after === "" ? 0 : /\s*$/.exec(raw)![0].length;
  return {
    start: start + lead,
    end: end - trail,
    id: id.replace(/\s+/g, " "),
    fill: (words) => writer.fill(words),
  };
}

/** The value of an attribute as a message. */
export function attributeRun({ start, end }: { start: number; end: number }, template: string): Run {
  return htmlRun([{ kind: "text", start, end }], template);
}

const signs: Readonly<Record<string, string>> = {
  nbsp: "\u00a0",
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  shy: "\u00ad",
};

const decoded = (text: string): string =>
  text.replace(/&(\w+);/g, (whole, name: string) => signs[name] ?? whole);

const encoded = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** Numbers holes and tags as they come. */
class Writer {
  readonly #holes: number[] = [];
  readonly #tags: { readonly open: string; readonly close: string }[] = [];
  readonly #template: string;

  constructor(template: string) {
    this.#template = template;
  }

  text(run: readonly Inline[]): string {
    return run
      .map((item) => (item.kind === "text" ? this.#plain(item.start, item.end) : this.#element(item)))
      .join("");
  }

  #plain(start: number, end: number): string {
    return fillHoles(decoded(this.#template.slice(start, end)), (index) => {
      this.#holes.push(index);
      return `{${this.#holes.length - 1}}`;
    });
  }

  #element({ open, close, content }: Exclude<Inline, { kind: "text" }>): string {
    const number = this.#tags.length;
    const source = ({ start, end }: { start: number; end: number }) => this.#template.slice(start, end);
    this.#tags.push({ open: source(open), close: close === undefined ? "" : source(close) });
    return close === undefined ? `<${number}/>` : `<${number}>${this.text(content)}</${number}>`;
  }

  fill(translation: string): string {
    return translation
      .split(/(\{\d+\}|<\/?\d+\/?>)/)
      .map((piece, at) => (at % 2 === 0 ? encoded(piece) : this.#mark(piece)))
      .join("");
  }

  #mark(mark: string): string {
    const number = Number(/\d+/.exec(mark)![0]);
    if (mark.startsWith("{")) return hole(this.#holes[number]!);
    const { open, close } = this.#tags[number]!;
    return mark.startsWith("</") ? close : open;
  }
}
