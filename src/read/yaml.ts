/** YAML with a way back to where each value stands. Parsed fast once; parsed again with positions only when asked. */
import { CORE_SCHEMA, load } from "js-yaml";
import {
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parse,
  parseDocument,
  YAMLParseError,
} from "yaml";
import type { Code } from "../model/codes.ts";
import type { Yaml, YamlPath } from "../model/source.ts";
import { explain } from "./yaml-words.ts";

export interface YamlFault {
  readonly code: Extract<Code, "front-matter-yaml" | "step-yaml" | "file-yaml" | "yaml-alias">;
  readonly offset: number;
  readonly message: string;
  /** What to do, where more can be said than the catalogue says. */
  readonly mend?: string | undefined;
}

type YamlCode = Exclude<YamlFault["code"], "yaml-alias">;

/** Anchors are refused: nothing in a procedure needs them, and nested ones can blow up to gigabytes. */
const options = { maxAliasCount: 0, uniqueKeys: true, logLevel: "error", schema: "core" } as const;

/**
 * Reads `text`, which stands at `offset` in its file. Gives a fault under `code` with the place and what to do where the
 * text is not YAML, and `yaml-alias` where it uses an alias.
 */
export function readYaml(
  text: string,
  offset: number,
  code: YamlCode,
): { yaml: Yaml; fault: YamlFault | undefined } {
  if (isTooDeep(text))
    return broken(offset, { code, offset, message: `it is nested more than ${deepest} deep` });
  try {
    return { yaml: { value: parseFast(text), offset, locate: locator(text, offset) }, fault: undefined };
  } catch (cause) {
    return broken(offset, faultOf(cause, text, offset, code));
  }
}

/** What could be an anchor or alias; in text it costs a second look, no more. */
const perhapsAlias = /(?:^|[\s[{,:-])[&*]\S/m;

/**
 * js-yaml reads the core schema of YAML 1.2 in less than half the time, but keeps no places and allows aliases: what it
 * refuses, and what may hold an alias, goes to the parser whose word counts.
 */
function parseFast(text: string): unknown {
  if (perhapsAlias.test(text)) return parse(text, options);
  try {
    return load(text, { schema: CORE_SCHEMA }) ?? null;
  } catch {
    return parse(text, options);
  }
}

/** What stands in the place of YAML that can't be read. */
export const brokenYaml = (offset: number): Yaml => ({ value: undefined, offset, locate: () => offset });

const broken = (offset: number, fault: YamlFault) => ({ yaml: brokenYaml(offset), fault });

/** Far deeper than any field; the parser needs time in the square of the depth. */
const deepest = 64;

/** Counts brackets and leading dashes, those inside text too: nobody opens so many without closing them. O(length). */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (const [bracket] of text.matchAll(/[[\]{}]/g)) {
    depth = bracket === "[" || bracket === "{" ? depth + 1 : Math.max(0, depth - 1);
    if (depth > deepest) return true;
  }
  return /^[ \t]*(?:[-?:][ \t]+){65}/m.test(text);
}

function faultOf(cause: unknown, text: string, offset: number, code: YamlCode): YamlFault {
  if (cause instanceof YAMLParseError) {
    const { found, mend, ...words } = explain(cause, text);
    return { code, offset: offset + words.offset, message: found, mend };
  }
  if (cause instanceof ReferenceError) {
    return {
      code: "yaml-alias",
      offset: offset + Math.max(0, text.search(/[*&]\w/)),
      message: "an alias stands here",
    };
  }
  const message =
    cause instanceof RangeError
      ? "it is nested too deeply"
      : String(cause instanceof Error ? cause.message : cause);
  return { code, offset, message };
}

function locator(text: string, offset: number): Yaml["locate"] {
  let document: Document.Parsed | undefined;
  return (path, end) => {
    document ??= parseDocument(text, { ...options, prettyErrors: false });
    return offset + find(document, path, end);
  };
}

/** The offset of what stands at `path`, or of the nearest thing above it that exists. */
function find(document: Document.Parsed, path: YamlPath, end: "key" | "value"): number {
  let node: unknown = document.contents;
  let at = startOf(node) ?? 0;
  for (const key of path) {
    const pair = isMap(node) ? (node.items as Pair[]).find((item) => keyOf(item) === String(key)) : undefined;
    const next: unknown = pair?.value ?? (isSeq(node) ? node.items[Number(key)] : undefined);
    if (pair === undefined && next === undefined) break;
    at =
      (end === "key" || next === undefined || next === null ? startOf(pair?.key ?? next) : startOf(next)) ??
      at;
    node = next;
  }
  return at;
}

const keyOf = (pair: Pair): string => String(isScalar(pair.key) ? pair.key.value : pair.key);

const startOf = (node: unknown): number | undefined => (isNode(node) ? (node as Node).range?.[0] : undefined);
