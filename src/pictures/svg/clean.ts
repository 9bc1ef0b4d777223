/** Cleans a drawing: refuses what is dangerous, leaves out what editors have written about it and about themselves. */
import type { Size } from "../../model/picture-files.ts";
import { attributeDanger, cssDanger, dangerousElements, embedded } from "./dangers.ts";
import { svgSize } from "./size.ts";
import { type XmlAttribute, XmlFault, type XmlToken, xmlTokens } from "./tokens.ts";

export interface SvgFault {
  readonly code: "picture-broken" | "picture-unsafe";
  readonly message: string;
  readonly offset: number;
}

/** A picture within the drawing, which is to be made anew like any other. */
export interface EmbeddedPicture {
  /** Where its address begins and ends in the cleaned text. */
  readonly start: number;
  readonly end: number;
  readonly kind: string;
  readonly base64: string;
}

export interface CleanSvg {
  readonly text: string;
  /** Undefined where it says none in pixels. */
  readonly size: Size | undefined;
  readonly embedded: readonly EmbeddedPicture[];
}

const svgSpace = "http://www.w3.org/2000/svg";
const htmlSpace = "http://www.w3.org/1999/xhtml";
/** Namespaces of attributes that a browser reads. */
const readSpaces = new Set([
  "http://www.w3.org/1999/xlink",
  "http://www.w3.org/XML/1998/namespace",
  "http://www.w3.org/2000/xmlns/",
]);

/** The drawing as it goes into the site, or every fault in it. O(length). */
export function cleanSvg(text: string): CleanSvg | readonly SvgFault[] {
  try {
    return new Cleaner(text.startsWith("\ufeff") ? text.slice(1) : text).run();
  } catch (cause) {
    if (!(cause instanceof XmlFault)) throw cause;
    const message = `the drawing is not well-formed: ${cause.message}`;
    return [{ code: "picture-broken", message, offset: cause.offset }];
  }
}

interface OpenElement {
  readonly name: string;
  readonly spaces: ReadonlyMap<string, string>;
  /** The element is not written, nor anything in it. */
  readonly isDropped: boolean;
  readonly isStyle: boolean;
}

class Cleaner {
  readonly #faults: SvgFault[] = [];
  readonly #open: OpenElement[] = [];
  readonly #embedded: EmbeddedPicture[] = [];
  readonly #text: string;
  #out = "";
  #roots = 0;
  #size: Size | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  run(): CleanSvg | readonly SvgFault[] {
    for (const token of xmlTokens(this.#text)) this.#take(token);
    if (this.#faults.length > 0) return this.#faults;
    const last = this.#open.at(-1);
    if (last !== undefined) throw new XmlFault(`<${last.name}> is not closed`, this.#text.length);
    if (this.#roots === 0) throw new XmlFault("there is no <svg> in it", 0);
    return { text: `${this.#out.trim()}\n`, size: this.#size, embedded: this.#shifted() };
  }

  /** Leading space of the output is cut off at the end. */
  #shifted(): EmbeddedPicture[] {
    const cut = this.#out.length - this.#out.trimStart().length;
    return this.#embedded.map((each) => ({ ...each, start: each.start - cut, end: each.end - cut }));
  }

  #take(token: XmlToken): void {
    this.#takers[token.kind]?.(token);
  }

  /** Comments are left out, and so are instructions. */
  readonly #takers: Readonly<Partial<Record<XmlToken["kind"], (token: XmlToken) => void>>> = {
    open: (token) => this.#begin(token),
    close: (token) => this.#end(token),
    text: (token) => this.#content(token),
    cdata: (token) => this.#content(token),
    declaration: ({ start }) =>
      this.#refuse(start, "<!DOCTYPE", "a document type can put in text from elsewhere"),
    instruction: ({ start, name }) => {
      if (name === "xml-stylesheet")
        this.#refuse(start, "<?xml-stylesheet", "it takes in another style sheet");
    },
  };

  #refuse(offset: number, what: string, why: string): void {
    this.#faults.push({
      code: "picture-unsafe",
      message: `${what} may not stand in a drawing: ${why}`,
      offset,
    });
  }

  #content({ kind, start, end }: XmlToken): void {
    const inner = this.#open.at(-1);
    const written = this.#text.slice(start, end);
    if (inner === undefined) {
      if (written.trim() !== "") throw new XmlFault("there is text outside <svg>", start);
      return;
    }
    if (inner.isDropped) return;
    const danger = inner.isStyle ? cssDanger(kind === "cdata" ? written : decoded(written)) : undefined;
    if (danger !== undefined) this.#refuse(start, "<style>", danger);
    this.#out += written;
  }

  #begin(token: XmlToken): void {
    const outer = this.#open.at(-1);
    if (outer === undefined) this.#root(token);
    const spaces = spacesOf(token, outer?.spaces ?? new Map());
    const [space, local] = named(token, spaces, spaces.get(""));
    const isDropped = outer?.isDropped === true || space !== svgSpace || local === "metadata";
    const danger =
      space === htmlSpace ? "it belongs to a web page" : space === svgSpace && dangerousElements.get(local);
    if (danger) this.#refuse(token.start, `<${token.name}>`, danger);
    if (!isDropped) this.#write(token, local, spaces);
    if (!token.isEmpty) this.#open.push({ name: token.name, spaces, isDropped, isStyle: local === "style" });
  }

  #root(token: XmlToken): void {
    const spaces = spacesOf(token, new Map());
    const [space, local] = named(token, spaces, spaces.get(""));
    if (space !== svgSpace || local !== "svg")
      throw new XmlFault(`it begins with <${token.name}>; expected <svg xmlns="${svgSpace}">`, token.start);
    if (++this.#roots > 1) throw new XmlFault("there are two drawings in one file", token.start);
    this.#size = svgSize(new Map(token.attributes.map(({ name, value }) => [name, value])));
  }

  #end(token: XmlToken): void {
    const open = this.#open.pop();
    if (open?.name !== token.name)
      throw new XmlFault(
        `</${token.name}> closes ${open === undefined ? "nothing" : `<${open.name}>`}`,
        token.start,
      );
    if (!open.isDropped) this.#out += this.#text.slice(token.start, token.end);
  }

  /** The tag without what only an editor reads. */
  #write(token: XmlToken, element: string, spaces: ReadonlyMap<string, string>): void {
    this.#out += `<${token.name}`;
    for (const attribute of token.attributes) {
      const [space, local] = named(attribute, spaces, undefined);
      if (!isRead(attribute, space)) continue;
      const danger = attributeDanger(element, local, attribute);
      if (danger !== undefined)
        this.#refuse(
          this.#text.indexOf(attribute.name, attribute.start),
          `${attribute.name}= of <${token.name}>`,
          danger,
        );
      this.#writeAttribute(attribute, local);
    }
    this.#out += token.isEmpty ? "/>" : ">";
  }

  #writeAttribute({ value, start, end }: XmlAttribute, local: string): void {
    const written = this.#text.slice(start, end);
    const picture = local === "href" ? embedded.exec(value) : null;
    if (picture !== null) {
      const from = this.#out.length + written.search(/["']/) + 1;
      const [, kind = "", base64 = ""] = picture;
      this.#embedded.push({ start: from, end: this.#out.length + written.length - 1, kind, base64 });
    }
    this.#out += written;
  }
}

/** Attributes without a prefix, and those of namespaces that a browser reads; declarations only of these. */
function isRead({ name, value }: XmlAttribute, space: string | undefined): boolean {
  if (name === "xmlns") return true;
  if (name.startsWith("xmlns:")) return readSpaces.has(value) || value === svgSpace;
  return space === undefined ? !name.includes(":") : readSpaces.has(space);
}

function spacesOf(token: XmlToken, outer: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const own = token.attributes.filter(({ name }) => name === "xmlns" || name.startsWith("xmlns:"));
  if (own.length === 0 && outer.size > 0) return outer;
  return new Map([
    ["xml", "http://www.w3.org/XML/1998/namespace"],
    ["xmlns", "http://www.w3.org/2000/xmlns/"],
    ...outer,
    ...own.map(({ name, value }) => [name.slice("xmlns:".length), value] as const),
  ]);
}

/** Namespace and name without prefix. */
function named(
  { name, start }: { readonly name: string; readonly start: number },
  spaces: ReadonlyMap<string, string>,
  otherwise: string | undefined,
): readonly [space: string | undefined, local: string] {
  const colon = name.indexOf(":");
  if (colon === -1) return [otherwise, name];
  const space = spaces.get(name.slice(0, colon));
  if (space === undefined)
    throw new XmlFault(`nothing says what "${name.slice(0, colon)}:" of ${name} stands for`, start);
  return [space, name.slice(colon + 1)];
}

const decoded = (css: string): string =>
  css.replace(/&(?:#x([0-9a-f]+)|#(\d+)|[a-z]+);/gi, (_, hex?: string, decimal?: string) =>
    (hex ?? decimal) ? String.fromCodePoint(Number.parseInt(hex ?? decimal!, hex ? 16 : 10)) : "",
  );
