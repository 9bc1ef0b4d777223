/** Cuts Markdown at its headings, takes the step blocks out and lists links and pictures with their places. */
import MarkdownIt, { type Token } from "markdown-it";
import { markdownOptions } from "../model/markdown.ts";
import type { Link, OtherBlock, Picture, Section, Yaml } from "../model/source.ts";
import { isClosed, isStepBlock, notClosed, otherBlock } from "./blocks.ts";
import { brokenYaml, readYaml, type YamlFault } from "./yaml.ts";

const markdown = new MarkdownIt(markdownOptions);

export interface Cut {
  readonly sections: readonly Section[];
  readonly otherBlocks: readonly OtherBlock[];
  readonly links: readonly Link[];
  readonly pictures: readonly Picture[];
  readonly faults: readonly YamlFault[];
}

/** Cuts the body that stands at `bodyOffset` in `text`. The first section has level 0 and holds what precedes any heading. */
export function cutMarkdown(text: string, bodyOffset: number): Cut {
  const body = text.slice(bodyOffset);
  const lines = lineOffsets(body, bodyOffset);
  const tokens = markdown.parse(body, {});
  const faults: YamlFault[] = [];
  const sections = cutSections(tokens, { text, lines }, faults);
  const otherBlocks = tokens.flatMap((token) => otherBlock(token, lines) ?? []);
  return { sections, otherBlocks, ...findReferences(tokens, text, lines), faults };
}

type OpenSection = Section & { readonly prose: Token[]; readonly steps: Yaml[] };

/** A text and where its body's lines begin. */
interface Lines {
  readonly text: string;
  readonly lines: readonly number[];
}

function cutSections(tokens: readonly Token[], body: Lines, faults: YamlFault[]): Section[] {
  const { lines } = body;
  let section: OpenSection = { level: 0, title: "", offset: lines[0] ?? 0, prose: [], steps: [] };
  const sections = [section];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const offset = lines[token.map?.[0] ?? 0] ?? 0;
    if (token.type === "heading_open" && token.level === 0) {
      section = {
        level: Number(token.tag.slice(1)),
        title: plainText(tokens[i + 1]),
        offset,
        prose: [],
        steps: [],
      };
      sections.push(section);
      i += 2;
    } else if (isStepBlock(token)) {
      section.steps.push(readStep(token, body, faults));
    } else section.prose.push(token);
  }
  return sections;
}

function readStep(token: Token, { text, lines }: Lines, faults: YamlFault[]): Yaml {
  const [first, end] = token.map!;
  const offset = lines[first]!;
  if (!isClosed(token, text.slice(lines[end - 1], lines[end]))) {
    faults.push(notClosed(offset));
    return brokenYaml(offset);
  }
  const { yaml, fault } = readYaml(token.content, lines[first + 1] ?? offset, "step-yaml");
  if (fault !== undefined) faults.push(fault);
  return yaml;
}

const plainText = (inline: Token | undefined): string =>
  (inline?.children ?? []).map((child) => (child.type === "softbreak" ? " " : child.content)).join("");

function lineOffsets(body: string, start: number): number[] {
  const offsets = [start];
  for (let at = body.indexOf("\n"); at >= 0; at = body.indexOf("\n", at + 1)) offsets.push(start + at + 1);
  return offsets;
}

/** The tokens that refer to something, and the attribute that says to what. */
const attributes = new Map([
  ["image", "src"],
  ["link_open", "href"],
]);

/** Inline tokens carry no columns: the place is where the address is next found in the lines of their block. */
function findReferences(
  tokens: readonly Token[],
  text: string,
  lines: readonly number[],
): { links: Link[]; pictures: Picture[] } {
  const links: Link[] = [];
  const pictures: Picture[] = [];
  for (const block of tokens) {
    let from = lines[block.map?.[0] ?? 0] ?? 0;
    for (const child of block.children ?? []) {
      const attribute = attributes.get(child.type);
      if (attribute === undefined) continue;
      const address = decoded(String(child.attrGet(attribute)));
      const found = text.indexOf(address, from);
      const offset = found < 0 ? from : found;
      from = offset + 1;
      if (child.type === "image") pictures.push({ src: address, alt: child.content, offset });
      else links.push({ href: address, offset });
    }
  }
  return { links, pictures };
}

/** markdown-it percent-encodes addresses; files on disk are not. */
function decoded(address: string): string {
  try {
    return decodeURI(address);
  } catch {
    return address;
  }
}
