/** Renders the Markdown that was read, with links and pictures as they are on the page where it stands. */
import MarkdownIt, { type Token } from "markdown-it";
import type { RenderProse } from "../../layouts/book.ts";
import { codeFrame } from "../../layouts/components/code-frame.ts";
import { enlarge, picture, type SizeOf } from "../../layouts/components/picture.ts";
import { html, raw } from "../../layouts/html.ts";
import { t } from "../engine/words.ts";
import type { Address } from "../model/address.ts";
import { linkTo, linkToFile } from "../model/address.ts";
import { addressOfPath, readLink } from "../model/link.ts";
import { markdownOptions } from "../model/markdown.ts";
import { resolvePath } from "../model/path.ts";
import { ruleTables } from "./prose-table.ts";

/** Where the tokens came from and where they go. */
interface Place {
  readonly path: string;
  readonly from: Address;
}

const placeOf = (env: unknown) => env as Place;

/**
 * Makes the renderer. `sizeOf` gives the size of a picture of the content folder; `holds` says whether a page that shows
 * part of a content file has the place of that name too.
 */
export function proseRenderer(sizeOf: SizeOf, holds: (page: Address, at: string) => boolean): RenderProse {
  const markdown = new MarkdownIt(markdownOptions);
  const rules = markdown.renderer.rules;
  ruleTables(rules);
  rules.link_open = (tokens, index, options, env, self) => {
    const attributes = linkAttributes(String(tokens[index]!.attrGet("href") ?? ""), placeOf(env), holds);
    return self.renderToken([withAttributes(tokens[index]!, attributes)], 0, options);
  };
  rules.image = (tokens, index, options, env, self) => {
    const token = tokens[index]!;
    const { path, from } = placeOf(env);
    const src = decode(String(token.attrGet("src") ?? ""));
    const alt = self.renderInlineAsText(token.children ?? [], options, env);
    const file = resolvePath(path, src) ?? src;
    const larger = isInLink(tokens, index) ? undefined : enlarge(file, { sizeOf }, from);
    return html`${picture({ file, alt }, { sizeOf }, from)}${larger}`.text;
  };
  rules.fence = (tokens, index) => `${codeFrame(tokens[index]!.content, t`Lines as they stand`).text}\n`;
  rules.code_block = rules.fence;
  return (section, path, from) =>
    raw(markdown.renderer.render(section.prose as Token[], markdown.options, { path, from } satisfies Place));
}

/** A link may not hold another one. */
const isInLink = (tokens: readonly Token[], index: number): boolean =>
  tokens
    .slice(0, index)
    .reduce((depth, { type, nesting }) => depth + (/^link_/.test(type) ? nesting : 0), 0) > 0;

type Attributes = readonly (readonly [string, string])[];

/** A copy: the tokens are rendered for more than one page. */
function withAttributes(token: Token, attributes: Attributes): Token {
  const copy = Object.assign(Object.create(Object.getPrototypeOf(token)) as Token, token);
  const kept = (token.attrs ?? []).filter(([name]) => !attributes.some(([other]) => other === name));
  copy.attrs = [...attributes.map(([name, value]): [string, string] => [name, value]), ...kept];
  return copy;
}

function linkAttributes(
  href: string,
  { path, from }: Place,
  holds: (page: Address, at: string) => boolean,
): Attributes {
  const link = readLink(path, decode(href));
  if (link.kind === "elsewhere")
    return [
      ["href", href],
      ["rel", "external noreferrer"],
    ];
  if (link.kind === "outside") return [["href", href]];
  if (link.path === path && link.at !== undefined && holds(from, link.at)) return [["href", `#${link.at}`]];
  const address = addressOfPath(link.path, link.at);
  return [["href", address === undefined ? linkToFile(from, link.path) : linkTo(from, address)]];
}

/** markdown-it percent-encodes addresses; ours are names of files. */
function decode(address: string): string {
  try {
    return decodeURI(address);
  } catch {
    return address;
  }
}
