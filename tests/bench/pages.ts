/** Weighs the pages of a built site as they are sent: compressed. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { proseOf } from "./prose.ts";
import { quantile, type Row } from "./row.ts";

const kibibyte = 1024;

/** gzip at the level that servers commonly use. */
const gzipped = (text: string | Buffer): number => gzipSync(text, { level: 6 }).length / kibibyte;

interface PageKind {
  readonly name: string;
  /** Of a module's page, below `modules/<id>/`; or the page of a section. */
  readonly at: (module: string) => string;
  /** The most script that it may load, in KiB. */
  readonly script?: number;
}

const kinds: readonly PageKind[] = [
  { name: "home page", at: () => "" },
  { name: "module page", at: (module) => `modules/${module}/`, script: 5 },
  { name: "order of steps", at: (module) => `modules/${module}/order/`, script: 5 },
  { name: "bench view", at: (module) => `modules/${module}/bench/` },
  { name: "practice", at: (module) => `modules/${module}/practice/` },
  { name: "dry run", at: (module) => `modules/${module}/dry-run/`, script: 40 },
  { name: "quiz", at: (module) => `modules/${module}/quiz/`, script: 40 },
  { name: "bench sums", at: () => "sums/", script: 40 },
  { name: "search page, its index included", at: () => "search/" },
];

/**
 * How much HTML and CSS module pages of a site weigh beyond their prose, and how much script each kind of page loads. Prose
 * is what the author wrote to be read: the body, each text of the module's data once, and once what the safety messages say
 * of each hazard (`prose.ts`).
 */
export function pageRows(content: string, site: string, name: string): Row[] {
  const modules = readdirSync(join(content, "modules")).slice(0, 100);
  const extra = modules.map((module) => weightBeyondProse(content, site, module));
  return [
    {
      what: `${name}: HTML + CSS of a module page beyond its prose, median`,
      measured: quantile(extra, 0.5),
      unit: "KiB",
      budget: 14,
    },
    {
      what: `${name}: HTML + CSS of a module page beyond its prose, largest`,
      measured: Math.max(...extra),
      unit: "KiB",
      budget: 14,
    },
    ...kinds.flatMap((kind) => scriptRow(kind, site, modules[0]!, name)),
  ];
}

function weightBeyondProse(content: string, site: string, module: string): number {
  const file = join(site, "modules", module, "index.html");
  const styles = filesOf(file, /<link rel="stylesheet" href="([^"]+)"/g);
  const whole = gzipped(readFileSync(file)) + sum(styles.map((style) => gzipped(readFileSync(style))));
  return whole - gzipped(proseOf(content, module));
}

function scriptRow({ name, at, script }: PageKind, site: string, module: string, programme: string): Row[] {
  const file = join(site, at(module), "index.html");
  if (!existsSync(file)) return [];
  const weight = sum(
    filesOf(file, /<script\b[^>]* ?src="([^"]+)"/g).map((path) => gzipped(readFileSync(path))),
  );
  return [
    {
      what: `${programme}: script of the ${name}`,
      measured: weight,
      unit: "KiB",
      ...(script === undefined ? {} : { budget: script }),
    },
  ];
}

/** The files that a page names, by the first group of the pattern. */
function filesOf(page: string, pattern: RegExp): string[] {
  const html = readFileSync(page, "utf8");
  return [...html.matchAll(pattern)].map((match) => resolve(dirname(page), match[1]!));
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
