/** The pages of the built site. */
import { readdirSync, readFileSync } from "node:fs";
import { inject } from "vitest";

export interface SitePage {
  /** Relative to the site's address: "" for the home page, "modules/x/". */
  readonly path: string;
  /** Relative to the site's folder. */
  readonly file: string;
  readonly html: string;
  /** From the class of its body; pages of the kind "plain" each count as a kind of their own. */
  readonly kind: string;
}

export function sitePages(folder: string = inject("siteDir")): SitePage[] {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) =>
    file.replaceAll("\\", "/"),
  );
  return files
    .filter((file) => file.endsWith(".html"))
    .sort()
    .map((file) => {
      const html = readFileSync(`${folder}/${file}`, "utf8");
      const path = file.replace(/(^|\/)index\.html$/, "$1");
      const kind = /<body class="page-([\w-]+)"/.exec(html)?.[1] ?? "none";
      return { path, file, html, kind: kind === "plain" ? `plain ${path}` : kind };
    });
}

/** One page of each kind: the one with the most in it. */
export function pageOfEachKind(pages: readonly SitePage[] = sitePages()): SitePage[] {
  const largest = new Map<string, SitePage>();
  for (const page of pages) {
    if (page.html.length > (largest.get(page.kind)?.html.length ?? -1)) largest.set(page.kind, page);
  }
  return [...largest.values()];
}

/** What the page hands to its script. */
export function pageData<Data>({ html, path }: SitePage): Data {
  const block = /<script type="application\/json" id="page-data">(.*?)<\/script>/s.exec(html)?.[1];
  if (block === undefined) throw new Error(`${path} hands no data to its script`);
  return JSON.parse(block) as Data;
}
