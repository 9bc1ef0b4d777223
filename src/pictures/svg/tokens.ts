/** Cuts XML (W3C, Extensible Markup Language 1.0) into tags and what lies between, strictly enough that a browser's reader sees the same. */

export interface XmlAttribute {
  readonly name: string;
  /** With its references put in. */
  readonly value: string;
  readonly start: number;
  readonly end: number;
}

export interface XmlToken {
  readonly kind: "open" | "close" | "text" | "cdata" | "comment" | "instruction" | "declaration";
  readonly start: number;
  readonly end: number;
  /** Of a tag or an instruction. */
  readonly name: string;
  readonly attributes: readonly XmlAttribute[];
  /** An opening tag that closes itself. */
  readonly isEmpty: boolean;
}

/** Thrown where a text is not well-formed. */
export class XmlFault extends Error {
  readonly offset: number;
  constructor(message: string, offset: number) {
    super(message);
    this.offset = offset;
  }
}

/** What begins with a sign and ends with another. The longest beginnings come first. */
const fenced: readonly { readonly from: string; readonly to: string; readonly kind: XmlToken["kind"] }[] = [
  { from: "<!--", to: "-->", kind: "comment" },
  { from: "<![CDATA[", to: "]]>", kind: "cdata" },
  { from: "<?", to: "?>", kind: "instruction" },
  { from: "<!", to: ">", kind: "declaration" },
];

/** As far as a document type, behind which names may mean anything. O(length). Throws an XmlFault. */
export function xmlTokens(text: string): XmlToken[] {
  const tokens: XmlToken[] = [];
  for (let at = 0; at < text.length; ) {
    const token = text[at] === "<" ? markup(text, at) : textFrom(text, at);
    tokens.push(token);
    if (token.kind === "declaration") break;
    at = token.end;
  }
  return tokens;
}

const plain = (kind: XmlToken["kind"], start: number, end: number, name = ""): XmlToken => ({
  ...{ kind, start, end, name },
  attributes: [],
  isEmpty: false,
});

function textFrom(text: string, start: number): XmlToken {
  const next = text.indexOf("<", start);
  const end = next === -1 ? text.length : next;
  decodeXml(text.slice(start, end), start);
  return plain("text", start, end);
}

function markup(text: string, start: number): XmlToken {
  for (const { from, to, kind } of fenced) {
    if (!text.startsWith(from, start)) continue;
    const end = text.indexOf(to, start + from.length);
    if (end === -1) throw new XmlFault(`"${from}" is not closed by "${to}"`, start);
    return plain(kind, start, end + to.length, /^<\?([^\s?]+)/.exec(text.slice(start, end))?.[1]);
  }
  return tag(text, start);
}

const nameAt = /[^\s<>/="'&]+/y;
const spaceAt = /\s+/y;

function tag(text: string, start: number): XmlToken {
  const isClose = text[start + 1] === "/";
  let at = start + (isClose ? 2 : 1);
  const name = take(nameAt, text, at);
  if (name === "") throw new XmlFault('"<" begins no tag', start);
  at += name.length;
  const attributes: XmlAttribute[] = [];
  for (;;) {
    const space = take(spaceAt, text, at);
    at += space.length;
    const isEmpty = text.startsWith("/>", at);
    if (text[at] === ">" || isEmpty) {
      const end = at + (isEmpty ? 2 : 1);
      if (isClose) return plain("close", start, end, name);
      return { kind: "open", start, end, name, attributes, isEmpty };
    }
    if (space === "" || isClose || at >= text.length)
      throw new XmlFault(`the tag <${name} is not closed by ">"`, start);
    const attribute = attributeAt(text, at);
    if (attributes.some((other) => other.name === attribute.name))
      throw new XmlFault(`the attribute ${attribute.name} stands twice`, at);
    attributes.push({ ...attribute, start: at - space.length });
    at = attribute.end;
  }
}

function take(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? "";
}

const valueAt = /\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;

function attributeAt(text: string, start: number): XmlAttribute {
  const name = take(nameAt, text, start);
  valueAt.lastIndex = start + name.length;
  const match = name === "" ? null : valueAt.exec(text);
  if (match === null) throw new XmlFault(`the attribute "${name}" has no value in quotes`, start);
  return { name, value: decodeXml(match[1] ?? match[2] ?? "", start), start, end: valueAt.lastIndex };
}

const predefined = new Map([
  ["lt", "<"],
  ["gt", ">"],
  ["amp", "&"],
  ["quot", '"'],
  ["apos", "'"],
]);

/** Puts the five names and the numbers of XML in. Any other name would come from a document type, which a picture has none of. */
function decodeXml(text: string, offset: number): string {
  return text.replace(/&([^;\s&]*);?/g, (whole, name: string, at: number) => {
    const number = /^#(?:x([0-9a-f]+)|(\d+))$/i.exec(name);
    const code = number === null ? undefined : Number.parseInt(number[1] ?? number[2]!, number[1] ? 16 : 10);
    const found = code === undefined ? predefined.get(name) : characterOf(code);
    if (found === undefined || !whole.endsWith(";"))
      throw new XmlFault(`"${whole}" names no character that XML knows`, offset + at);
    return found;
  });
}

const characterOf = (code: number): string | undefined =>
  code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
