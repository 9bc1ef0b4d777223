/** One file of a module, made of the pages of a built site: nothing in it asks for anything else. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { singleFrame } from "../../layouts/single/frame.ts";
import { gatherParts } from "./gather-parts.ts";
import { inliner, inlineStyle } from "./inline.ts";
import { type Joining, joinData, joinPart } from "./join-parts.ts";
import type { Part } from "./part.ts";

export interface SingleOptions {
  /** The folder of the built site. */
  readonly site: string;
  readonly module: string;
  /** The compiled script that shows one part at a time. */
  readonly script: string;
  readonly layoutsDir: string;
}

export interface Single {
  readonly html: string;
  /** How many pages of the site are parts of it. */
  readonly parts: number;
}

/** Undefined where the site has no such module. O(bytes of its pages and pictures). */
export function makeSingle({ site, module, script, layoutsDir }: SingleOptions): Single | undefined {
  const parts = gatherParts(site, module);
  const [sheet] = parts;
  if (sheet === undefined) return undefined;
  const read = (file: string): string => readFileSync(join(site, file), "utf8");
  const page = read(`${sheet.folder}index.html`);
  const inline = inliner(site);
  const files = styleFiles(site, page, parts);
  const own = readFileSync(join(layoutsDir, "styles", "single.css"), "utf8");
  const style = [...files.map((file) => inlineStyle(read(file), file, inline)), own].join("\n");
  const fixed = new Set([...style.matchAll(/url\(#([\w-]+)\)/g)].map((match) => match[1]!));
  const joining = { parts: new Map(parts.map((part) => [part.folder, part])), fixed, inline };
  const scripts = new Set(
    [script, ...parts.flatMap((part) => (part.script === undefined ? [] : [read(part.script)]))].map(ended),
  );
  const html = singleFrame({
    language: /<html lang="([^"]*)"/.exec(page)?.[1] ?? "en",
    title: sheet.title,
    programme: /<a class="masthead-name"[^>]*>([^<]*)</.exec(page)?.[1] ?? "",
    policy: policyFor([style], [...scripts]),
    style,
    script: ended(script),
    parts: parts.map((part, at) => ({
      kind: part.kind,
      id: part.id,
      title: part.title,
      html: whole(part, at === 0, joining, read),
    })),
    colophon: /<footer class="colophon">.*?<\/footer>/s.exec(page)?.[0] ?? "",
  });
  return { html, parts: parts.length };
}

/** The two that all pages share, as the page of a part with a further one names them. */
function styleFiles(site: string, sheet: string, parts: readonly Part[]): string[] {
  const pages = [
    sheet,
    ...parts.slice(1, 2).map(({ folder }) => readFileSync(join(site, folder, "index.html"), "utf8")),
  ];
  return [
    ...new Set(
      pages.flatMap((page) =>
        [...page.matchAll(/<link rel="stylesheet" href="(?:\.\.\/)*([^"]+)"/g)].map((match) => match[1]!),
      ),
    ),
  ];
}

/** A part with its data and its script at its end, by which the script finds it. */
function whole(part: Part, isFirst: boolean, joining: Joining, read: (file: string) => string): string {
  const main = headed(joinPart(part, joining), isFirst);
  const data = part.data === undefined ? "" : dataBlock(part, joining);
  const script = part.script === undefined ? "" : `<script>${ended(read(part.script))}</script>\n`;
  return `${main}\n${data}${script}`;
}

/** The document has one title. Sections of the same name in several parts are no landmarks, except for the first part's. */
function headed(main: string, isFirst: boolean): string {
  const titled = main.replace("<h1>", '<h2 class="part-title">').replace("</h1>", "</h2>");
  return isFirst ? titled : titled.replace(/(<section\b[^>]*?) aria-labelledby="[^"]*"/g, "$1");
}

const dataBlock = (part: Part, joining: Joining): string =>
  `<script type="application/json" id="${part.prefix}page-data">${JSON.stringify(joinData(part, joining)).replaceAll("<", "\\u003c")}</script>\n`;

/** Nothing in a script may end its element. */
const ended = (script: string): string =>
  script.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");

/** Nothing runs but what was put in here, named by its digest (W3C, Content Security Policy 3, 2.3.1), and nothing is fetched. */
function policyFor(styles: readonly string[], scripts: readonly string[]): string {
  const hashes = (texts: readonly string[]) =>
    texts.map((text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`).join(" ");
  return [
    "default-src 'none'",
    `style-src ${hashes(styles)}`,
    `script-src ${hashes(scripts)}`,
    "img-src data:",
    "font-src data:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}
