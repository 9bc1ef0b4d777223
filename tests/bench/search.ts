/** Weighs and times the search of a built site, with the code that the search page runs. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { searcher } from "../../src/browser/search/hits.ts";
import type { SearchGlobal } from "../../src/model/search-data.ts";
import { quantile, type Row } from "./row.ts";
import { hazardNames, machines, partNames, qualities, threads, toolNames, verbs } from "./words.ts";

export function searchRows(site: string): Row[] {
  const index = readdirSync(join(site, "assets")).find((name) => name.startsWith("search-index-"))!;
  const code = readFileSync(join(site, "assets", index), "utf8");
  const began = performance.now();
  const { benchwrightSearch } = evaluate(code);
  const search = searcher(benchwrightSearch!);
  const loading = performance.now() - began;
  const times = keyPresses().map((query) => {
    const start = performance.now();
    search(query);
    return performance.now() - start;
  });
  return [
    {
      what: "1,000 modules: search index",
      measured: gzipSync(code, { level: 6 }).length / 1024,
      unit: "KiB",
      budget: 300,
    },
    { what: "1,000 modules: search index made ready", measured: loading, unit: "ms" },
    {
      what: "1,000 modules: results after a key press, p95",
      measured: quantile(times, 0.95),
      unit: "ms",
      budget: 16,
    },
  ];
}

function evaluate(code: string): SearchGlobal {
  const page: SearchGlobal & { self?: object } = {};
  page.self = page;
  runInContext(code, createContext(page));
  return page;
}

/** What stands in the field after each key, as words of the programme are typed: whole ones, beginnings, slips. */
function keyPresses(): string[] {
  const phrases = [
    ...machines.map((machine, i) => `${qualities[i % qualities.length]} ${machine}`),
    ...partNames.map((part, i) => `${verbs[i % verbs.length]} ${part}`),
    ...threads,
    ...toolNames,
    ...hazardNames,
    "ratchte",
    "pattern 512",
  ];
  return phrases.flatMap((phrase) => Array.from(phrase, (_, i) => phrase.slice(0, i + 1)));
}
