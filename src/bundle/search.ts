/** Writes the search index as a script that the search page loads, and no other page, and the shards that it asks for. */
import { createHash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { proseFolder, type SearchData, type SearchGlobal } from "../model/search-data.ts";
import type { SearchDocument } from "../model/site.ts";
import { asLiteral } from "./literal.ts";
import { buildProse } from "./prose-shards.ts";
import { buildSearch, groupByPage } from "./search-index.ts";

const global: keyof SearchGlobal = "benchwrightSearch";

/** The index of the documents that were written last, so that the same ones are not indexed again. */
export interface KeptSearch {
  last?: Kept;
}

interface Kept {
  readonly documents: string;
  readonly name: string;
  readonly text: string;
  readonly shards: ReadonlyMap<string, string>;
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
  if (kept.last?.documents !== key) kept.last = { documents: key, ...scriptsOf(documents) };
  const { name, text, shards } = kept.last;
  await mkdir(join(outDir, proseFolder), { recursive: true });
  await writeFile(join(outDir, name), text);
  await Promise.all([...shards].map(([file, script]) => writeFile(join(outDir, file), script)));
  return name;
}

function scriptsOf(documents: readonly SearchDocument[]): Omit<Kept, "documents"> {
  const found = buildSearch(documents);
  const prose = buildProse(groupByPage(documents), found.pages);
  const data: SearchData = { ...found, prose: prose.data };
  const text = `self.${global}=JSON.parse(${asLiteral(JSON.stringify(data))});\n`;
  const digest = createHash("sha256").update(text).digest("hex").slice(0, 8).toUpperCase();
  return { name: `assets/search-index-${digest}.js`, text, shards: prose.files };
}
