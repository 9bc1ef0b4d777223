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

interface Kept extends Scripts {
  readonly documents: string;
  /** The documents without what they say, which is all that the index is made of. */
  readonly named: string;
  readonly index: SearchData;
}

interface Scripts {
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
  if (kept.last?.documents !== key) kept.last = { documents: key, ...made(documents, kept.last) };
  const { name, text, shards } = kept.last;
  await mkdir(join(outDir, proseFolder), { recursive: true });
  await writeFile(join(outDir, name), text);
  await Promise.all([...shards].map(([file, script]) => writeFile(join(outDir, file), script)));
  return name;
}

/** A sentence more changes no name: the index stays, and only the shards are made anew. */
function made(documents: readonly SearchDocument[], last: Kept | undefined): Omit<Kept, "documents"> {
  const named = JSON.stringify(documents.map(({ says, ...rest }) => rest));
  const index = last?.named === named ? last.index : buildSearch(documents);
  return { named, index, ...scriptsOf(documents, index) };
}

function scriptsOf(documents: readonly SearchDocument[], found: SearchData): Scripts {
  const prose = buildProse(groupByPage(documents), found.pages);
  const data: SearchData = { ...found, prose: prose.data };
  const text = `self.${global}=JSON.parse(${asLiteral(JSON.stringify(data))});\n`;
  const digest = createHash("sha256").update(text).digest("hex").slice(0, 8).toUpperCase();
  return { name: `assets/search-index-${digest}.js`, text, shards: prose.files };
}
