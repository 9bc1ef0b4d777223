/** What the sections of all pages say, cut into small files that the search page fetches when it needs them. */
import { createHash } from "node:crypto";
import { makeShards, proseWords } from "../engine/search/prose.ts";
import {
  type ProseData,
  type ProseGlobal,
  type ProseTexts,
  proseFolder,
  type SearchPage,
} from "../model/search-data.ts";
import type { SearchDocument } from "../model/site.ts";
import { asLiteral } from "./literal.ts";

export interface ProseShards {
  readonly data: ProseData;
  /** Scripts by their paths in the site. */
  readonly files: ReadonlyMap<string, string>;
}

const global: keyof ProseGlobal = "benchwrightProse";

/** Of the documents of each page, its own first, as `groupByPage` gives them. O(words). */
export function buildProse(
  groups: readonly (readonly SearchDocument[])[],
  pages: readonly SearchPage[],
): ProseShards {
  const files = new Map<string, string>();
  const add = (what: unknown): string => {
    const text = JSON.stringify(what);
    const name = createHash("sha256").update(text).digest("hex").slice(0, 10);
    files.set(
      `${proseFolder}${name}.js`,
      `(self.${global}??={})["${name}"]=JSON.parse(${asLiteral(text)});\n`,
    );
    return name;
  };
  const placed = groups.map((group) => group.filter(({ isRow }) => !isRow));
  const shards = makeShards(placed.flatMap((group, page) => wordsOf(group, 1 + pages[page]![3].length)));
  return {
    data: {
      words: Object.fromEntries([...shards].map(([name, shard]) => [name, add(shard)])),
      texts: placed.map((group) => {
        const texts = textsOf(group);
        return texts.length === 0 ? "" : add(texts);
      }),
      steps: placed.map((group) => group.flatMap(({ isStep }, at) => (isStep ? [at] : []))),
    },
    files,
  };
}

/** Of the page itself and each of its places the words; what the index adds behind them says nothing. */
const wordsOf = (group: readonly SearchDocument[], places: number): Iterable<string>[] =>
  Array.from({ length: places }, (_, at) => {
    const { says = [], heading = "" } = group[at] ?? {};
    return says.length === 0 ? [] : [heading, ...says].flatMap(proseWords);
  });

const textsOf = (group: readonly SearchDocument[]): ProseTexts =>
  group.flatMap(({ says = [] }, at) => (says.length === 0 ? [] : [[at, says] as const]));
