/** Links between content files: ordinary relative Markdown links, such as `../../tools/oil-can.md` or `#let-down`. */
import type { Address } from "./address.ts";
import { resolvePath } from "./path.ts";
import type { Section, Source } from "./source.ts";

export type ReadLink =
  /** A web or mail address: not ours to check. */
  | { readonly kind: "elsewhere" }
  /** It leads out of the content folder. */
  | { readonly kind: "outside" }
  | { readonly kind: "page"; readonly path: string; readonly at: string | undefined };

/** Reads a link written in the content file `from` (paths from the content folder). */
export function readLink(from: string, href: string): ReadLink {
  if (/^(https?|mailto|tel):/i.test(href)) return { kind: "elsewhere" };
  const [written = "", at] = href.split("#", 2);
  const path = written === "" ? from : resolvePath(from, written);
  return path === undefined ? { kind: "outside" } : { kind: "page", path, at: at === "" ? undefined : at };
}

const pages = [
  { kind: "module", pattern: /^modules\/([^/]+)\/module\.md$/ },
  { kind: "quiz", pattern: /^modules\/([^/]+)\/quiz\.yaml$/ },
  { kind: "tool", pattern: /^tools\/([^/]+)\.md$/ },
  { kind: "substance", pattern: /^substances\/([^/]+)\.md$/ },
  { kind: "hazard", pattern: /^hazards\/([^/]+)\.md$/ },
] as const;

/** The content file of a module. */
export const modulePath = (id: string): string => `modules/${id}/module.md`;

/** The module in whose folder a content file lies; undefined for what belongs to none. */
export const moduleOf = (path: string): string | undefined => /^modules\/([^/]+)\//.exec(path)?.[1];

/** The page that a content file becomes; undefined for a file that becomes none. */
export function addressOfPath(path: string, at?: string): Address | undefined {
  for (const { kind, pattern } of pages) {
    const id = pattern.exec(path)?.[1];
    if (id !== undefined) return at === undefined ? { kind, id } : { kind, id, at };
  }
  return undefined;
}

/** The element id under which a section stands on its page: a step's own id, otherwise its heading in plain letters. */
export function anchorOf(section: Section): string {
  const id = (section.steps[0]?.value as { id?: unknown } | null | undefined)?.id;
  return typeof id === "string" ? id : slugOf(section.title);
}

/** The places on a page that a link may name after `#`. */
export function placesOn(source: Source): Set<string> {
  return new Set(source.sections.filter((section) => section.level > 0).map(anchorOf));
}

/** A heading in lower-case letters, digits and hyphens; accents are dropped, other letters kept. */
export function slugOf(title: string): string {
  const plain = title.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "") || "section";
}
