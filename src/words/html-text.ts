/** Finds what people read in the HTML of a template: runs of inline content, and the attributes that are read out or shown. */
import { withoutHoles } from "./holes.ts";

/** A tag, or the text between two; `start` and `end` are offsets in the template. */
type Token = Text | Tag;

interface Place {
  readonly start: number;
  readonly end: number;
}

export interface Text extends Place {
  readonly kind: "text";
}

export interface Tag extends Place {
  readonly kind: "tag";
  readonly name: string;
  readonly does: "open" | "close" | "alone";
}

/** Inline content: texts and whole elements. */
export type Inline = Text | Element;

export interface Element extends Place {
  readonly kind: "element";
  readonly open: Tag;
  /** Undefined where the element holds nothing: `<br>`. */
  readonly close: Tag | undefined;
  readonly content: readonly Inline[];
}

/** An attribute whose value is read by people; the place is that of the value, without its quotes. */
export type Shown = Place;

/** Elements that stand within a sentence. */
const inlineNames = new Set(
  "a abbr b br cite code data dfn em i kbd mark output q s small span strong sub sup time u var wbr tspan".split(
    " ",
  ),
);
const emptyNames = new Set(
  "br wbr img input meta link hr area col source circle rect path line use".split(" "),
);
const shownAttributes = new Set(
  "alt aria-label aria-description aria-roledescription title placeholder content".split(" "),
);

/** True where there is a letter that people could read. */
export const hasLetters = (text: string): boolean => /\p{L}/u.test(withoutHoles(text));

/** What of a template is a message: the inline content of each, and attributes. */
export function readable(template: string): { runs: Inline[][]; shown: Shown[] } {
  const shown: Shown[] = [];
  if (isAttribute(template)) {
    attributesOf(template, 0, template.length, "", shown);
    return { runs: [], shown };
  }
  const tokens = tokensOf(template, shown);
  return { runs: runsOf(tokens).flatMap((run) => narrowed(run, template)), shown };
}

/** ` class="on"`: a piece that is put into a tag. */
const isAttribute = (template: string): boolean =>
  /^\s+[a-z][a-z-]*(="[^"<>]*")?(\s|$)/.test(template) && !/[<>]/.test(template) && /="/.test(template);

function tokensOf(template: string, shown: Shown[]): Token[] {
  const tokens: Token[] = [];
  const pattern = /<!--[\s\S]*?-->|<![^>]*>|<(\/?)([a-z\ue000-\uf8ff][a-z0-9-]*)((?:"[^"]*"|[^">])*)>/gi;
  let at = 0;
  for (const match of template.matchAll(pattern)) {
    const [whole, slash, name = "", rest = ""] = match;
    const start = match.index;
    const end = start + whole.length;
    if (start > at) tokens.push({ kind: "text", start: at, end: start });
    at = end;
    const lower = name.toLowerCase();
    const isAlone = name === "" || rest.endsWith("/") || emptyNames.has(lower);
    tokens.push({ kind: "tag", name: lower, does: slash ? "close" : isAlone ? "alone" : "open", start, end });
    if (!slash && name !== "") attributesOf(template, start + 1 + name.length, end - 1, lower, shown);
  }
  if (at < template.length) tokens.push({ kind: "text", start: at, end: template.length });
  return tokens;
}

function attributesOf(template: string, start: number, end: number, tag: string, shown: Shown[]): void {
  const text = template.slice(start, end);
  if (tag === "meta" && !/name="description"/.test(text)) return;
  for (const match of text.matchAll(/([a-z-]+)="([^"]*)"/g)) {
    const [, name = "", value = ""] = match;
    if (!shownAttributes.has(name) || !hasLetters(value)) continue;
    const from = start + match.index + name.length + 2;
    shown.push({ start: from, end: from + value.length });
  }
}

/** Cuts tokens into runs at every tag that is not wholly inline. */
function runsOf(tokens: readonly Token[]): Inline[][] {
  const closes = partners(tokens);
  const runs: Inline[][] = [[]];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const inline = inlineAt(tokens, at, closes);
    if (inline === undefined) runs.push([]);
    else {
      runs.at(-1)!.push(inline.item);
      at = inline.last;
    }
    if (token.kind === "tag" && token.does === "open" && (token.name === "script" || token.name === "style"))
      at = closes.get(at) ?? tokens.length;
  }
  return runs.filter((run) => run.length > 0);
}

/** The token at which each opened element is closed. An element that is not closed in the template has none. */
function partners(tokens: readonly Token[]): Map<number, number> {
  const closes = new Map<number, number>();
  const open: number[] = [];
  for (const [at, token] of tokens.entries()) {
    if (token.kind === "text" || token.does === "alone") continue;
    if (token.does === "open") open.push(at);
    else {
      const from = open.findLastIndex((each) => (tokens[each] as Tag).name === token.name);
      if (from === -1) continue;
      closes.set(open[from]!, at);
      open.length = from;
    }
  }
  return closes;
}

function inlineAt(
  tokens: readonly Token[],
  at: number,
  closes: ReadonlyMap<number, number>,
): { item: Inline; last: number } | undefined {
  const token = tokens[at]!;
  if (token.kind === "text") return { item: token, last: at };
  if (!inlineNames.has(token.name) || token.does === "close") return undefined;
  const { start, end } = token;
  if (token.does === "alone")
    return { item: { kind: "element", open: token, close: undefined, content: [], start, end }, last: at };
  const last = closes.get(at);
  if (last === undefined) return undefined;
  const content: Inline[] = [];
  for (let inner = at + 1; inner < last; inner++) {
    const found = inlineAt(tokens, inner, closes);
    if (found === undefined) return undefined;
    content.push(found.item);
    inner = found.last;
  }
  const close = tokens[last] as Tag;
  return { item: { kind: "element", open: token, close, content, start, end: close.end }, last };
}

/** Leaves out runs without words, and of others what lies round the one element that has them. */
function narrowed(run: readonly Inline[], template: string): Inline[][] {
  const told = run.filter((item) => hasWords(item, template));
  if (told.length === 0) return [];
  const [only] = told;
  return told.length === 1 && only!.kind === "element" ? narrowed(only!.content, template) : [[...run]];
}

function hasWords(item: Inline, template: string): boolean {
  return item.kind === "text"
    ? hasLetters(template.slice(item.start, item.end).replace(/&\w+;/g, ""))
    : item.content.some((each) => hasWords(each, template));
}
