/**
 * Weighs and times the search of a built site, with the code that the search page runs: over names, and over prose with all
 * shards here, which is more than a reader's page has. How long it takes until results are seen is timed in the browser.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { type Search, searcher } from "../../src/browser/search/hits.ts";
import { type ProseView, proseView } from "../../src/browser/search/prose-view.ts";
import { type ProseGlobal, proseFolder, type SearchGlobal } from "../../src/model/search-data.ts";
import { quantile, type Row } from "./row.ts";
import { hazardNames, machines, partNames, qualities, threads, toolNames, verbs } from "./words.ts";

const kibibyte = 1024;

export function searchRows(site: string): Row[] {
  const assets = join(site, "assets");
  const index = readdirSync(assets).find((name) => name.startsWith("search-index-"))!;
  const code = readFileSync(join(assets, index), "utf8");
  const began = performance.now();
  const { benchwrightSearch } = evaluate<SearchGlobal>([code]);
  const search = searcher(benchwrightSearch!);
  const loading = performance.now() - began;
  const shards = readdirSync(join(site, proseFolder)).map((name) =>
    readFileSync(join(site, proseFolder, name), "utf8"),
  );
  const { benchwrightProse = {} } = evaluate<ProseGlobal>(shards);
  const prose = proseView(benchwrightSearch!, (name) => benchwrightProse[name]);
  return [
    {
      what: "1,000 modules: search's first load",
      measured: gzipped(code),
      unit: "KiB",
      budget: 300,
    },
    {
      what: "1,000 modules: largest of the shards of prose, each loaded when asked for",
      measured: Math.max(...shards.map(gzipped)),
      unit: "KiB",
    },
    { what: "1,000 modules: search index made ready", measured: loading, unit: "ms" },
    keyPressRow("1,000 modules: results over names after a key press, p95", search),
    keyPressRow("1,000 modules: results over all prose after a key press, p95", search, prose),
  ];
}

/** gzip at the level that servers commonly use. */
const gzipped = (text: string): number => gzipSync(text, { level: 6 }).length / kibibyte;

function keyPressRow(what: string, search: Search, prose?: ProseView): Row {
  const times = keyPresses().map((query) => {
    const start = performance.now();
    search(query, prose);
    return performance.now() - start;
  });
  return { what, measured: quantile(times, 0.95), unit: "ms", budget: 16 };
}

/** What scripts leave in the page's global. */
function evaluate<Global extends object>(scripts: readonly string[]): Global {
  const page = {} as Global & { self?: object };
  page.self = page;
  const context = createContext(page);
  for (const script of scripts) runInContext(script, context);
  return page;
}

/** What stands in the field after each key, as words of the programme are typed: whole ones, beginnings, slips. */
export function keyPresses(): string[] {
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
