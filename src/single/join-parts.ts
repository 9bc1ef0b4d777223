/** Makes a page's main part one of several in a document: ids of its own, links that lead within the file. */
import { posix } from "node:path";
import { carriedWidth } from "../model/picture-files.ts";
import type { Part } from "./part.ts";

export interface Joining {
  /** Parts by the folder of the page that they were. */
  readonly parts: ReadonlyMap<string, Part>;
  /** Ids that style sheets name, which therefore stay as they are. */
  readonly fixed: ReadonlySet<string>;
  /** The content of a file of the site as an address that needs no request. */
  readonly inline: (file: string) => string;
}

/** Attributes that name ids of the same page, one or several. */
const naming = new Set([
  "id",
  "for",
  "aria-labelledby",
  "aria-describedby",
  "aria-controls",
  "list",
  "headers",
]);

/** The site's layouts write every attribute in double quotes and escape every bracket in text, so tags can be told apart. */
export function joinPart(part: Part, joining: Joining): string {
  const main = inOneSize(withoutSiteOnly(part.main));
  const linked = main.replace(/<a\b([^>]*)>(.*?)<\/a>/gs, (whole, attributes: string, inner: string) =>
    leadsNowhere(attributes, part, joining) ? `<span class="not-here">${inner}</span>` : whole,
  );
  return linked.replace(
    /<([a-z][\w-]*)((?: [^<>]*)?)>/gi,
    (_, tag: string, attributes: string) => `<${tag}${attributesIn(attributes, tag, part, joining)}>`,
  );
}

/**
 * What has no use in a file: notes for the record, the list of faults, the key for mentors, other modules that use a sheet.
 * Nor is there a larger picture for links to lead to; the script shows the one that is there.
 */
const withoutSiteOnly = (main: string): string =>
  main
    .replace(/<div class="note-place[^>]*><\/div>\n?/g, "")
    .replace(/<section [^>]*aria-labelledby="s_used">.*?<\/section>\n?/gs, "")
    .replace(/<a class="enlarge"[^>]*? data-button="([^"]*)">[^<]*<\/a>/g, enlargeButton)
    .replace(/<a class="enlarge"[^>]*>([^<]*)<\/a>/g, enlargeButton)
    .replace(/<p class="(?:for-mentors|to-faults)[^>]*>.*?<\/p>\n?/gs, "");

const enlargeButton = (_: string, text: string): string =>
  `<button class="enlarge" type="button" hidden>${text}</button>`;

/** Of a picture in several widths the one to carry along, which is enough at the bench. */
const inOneSize = (main: string): string =>
  main.replace(
    /<picture><source [^>]*?srcset="([^"]*)"[^>]*>(<img [^>]*>)<\/picture>/g,
    (_, list: string, image: string) => image.replace(/ src="[^"]*"/, () => ` src="${sizeToCarry(list)}"`),
  );

function sizeToCarry(srcset: string): string {
  const entries = srcset.split(", ").map((entry) => entry.split(" ") as [string, string]);
  const fitting = entries.findLast(([, width]) => Number.parseInt(width, 10) <= carriedWidth);
  return (fitting ?? entries[0]!)[0];
}

/** Data that a script reads: what would go into a record goes nowhere, and links lead within the file. */
export function joinData(part: Part, joining: Joining): unknown {
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).filter(([name]) => name !== "record" && name !== "digest");
    return Object.fromEntries(entries.flatMap(([name, each]) => entryOf(name, each)));
  };
  const entryOf = (name: string, value: unknown): [string, unknown][] => {
    if (name === "see" && !isHere((value as { href?: string } | null)?.href)) return [];
    if (name === "href" && typeof value === "string")
      return [[name, target(value, part, joining) ?? `#${part.id}`]];
    return [[name, walk(value)]];
  };
  const isHere = (href: string | undefined) =>
    href !== undefined && target(href, part, joining) !== undefined;
  return walk(part.data);
}

function leadsNowhere(attributes: string, part: Part, joining: Joining): boolean {
  const href = / href="([^"]*)"/.exec(attributes)?.[1];
  return href !== undefined && target(href, part, joining) === undefined;
}

/** Where a link of a part leads in the one file; undefined where that is not in it. Addresses elsewhere stay as they are. */
function target(href: string, part: Part, { parts, fixed }: Joining): string | undefined {
  if (/^(?:https?|mailto|tel):/i.test(href)) return href;
  const [path = "", at] = href.split("#", 2);
  const file = path === "" ? `${part.folder}index.html` : posix.normalize(posix.join(part.folder, path));
  const found = parts.get(file.replace(/index\.html$/, ""));
  if (found === undefined || !(file === "" || file.endsWith("/") || file.endsWith("/index.html")))
    return undefined;
  return `#${at === undefined || at === "" ? found.id : idIn(found, at, fixed)}`;
}

const idIn = ({ prefix }: Part, id: string, fixed: ReadonlySet<string>): string =>
  fixed.has(id) ? id : `${prefix}${id}`;

function attributesIn(attributes: string, tag: string, part: Part, joining: Joining): string {
  const kept = tag === "img" ? attributes.replace(/ (?:srcset|sizes|loading)="[^"]*"/g, "") : attributes;
  return kept.replace(/ ([\w:-]+)="([^"]*)"/g, (whole, name: string, value: string) => {
    if (naming.has(name))
      return ` ${name}="${value
        .split(" ")
        .map((id) => idIn(part, id, joining.fixed))
        .join(" ")}"`;
    if (name === "href") return ` href="${target(value, part, joining) ?? value}"`;
    if (name === "src") return ` src="${joining.inline(posix.normalize(posix.join(part.folder, value)))}"`;
    return whole;
  });
}
