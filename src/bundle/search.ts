/** Writes the search index as a script that the search page loads, and no other page. */
import { createHash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { SearchGlobal } from "../model/search-data.ts";
import type { SearchDocument } from "../model/site.ts";
import { buildSearch } from "./search-index.ts";

const global: keyof SearchGlobal = "benchwrightSearch";

/** The index of the documents that were written last, so that the same ones are not indexed again. */
export interface KeptSearch {
  last?: { readonly documents: string; readonly name: string; readonly text: string };
}

/**
 * Builds the index and writes it below `outDir`; gives the file's name relative to `outDir`. The data is one string that
 * is parsed as JSON, which browsers do faster than they read a literal of that size.
 */
export async function writeSearch(
  documents: readonly SearchDocument[],
  outDir: string,
  kept: KeptSearch = {},
): Promise<string> {
  const key = JSON.stringify(documents);
  if (kept.last?.documents !== key) kept.last = { documents: key, ...scriptOf(documents) };
  const { name, text } = kept.last;
  await mkdir(join(outDir, "assets"), { recursive: true });
  await writeFile(join(outDir, name), text);
  return name;
}

function scriptOf(documents: readonly SearchDocument[]): { name: string; text: string } {
  const text = `self.${global}=JSON.parse(${asLiteral(JSON.stringify(buildSearch(documents)))});\n`;
  const digest = createHash("sha256").update(text).digest("hex").slice(0, 8).toUpperCase();
  return { name: `assets/search-index-${digest}.js`, text };
}

/** Single quotes, because JSON is full of double ones. */
function asLiteral(json: string): string {
  return `'${json.replaceAll("\\", "\\\\").replaceAll("'", "\\'").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029")}'`;
}
