/** Files to sources: found, decoded, split into YAML and prose. Faults of the text itself are found here. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Code } from "../model/codes.ts";
import { codes } from "../model/codes.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { placeAt } from "../model/place.ts";
import type { Reading, Source, SourceKind } from "../model/source.ts";
import { type FoundFile, findFiles } from "./files.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { kindOf } from "./kinds.ts";
import { cutMarkdown } from "./markdown.ts";
import { readYaml, type YamlFault } from "./yaml.ts";

/** Limits in bytes. A module of 900 words is some 10 kB. */
export const textLimit = 1024 * 1024;
export const pictureLimit = 10 * 1024 * 1024;

/** Reads a content folder. Never throws on what it finds there: every fault is a diagnostic, and what could be read is given. */
export function read(folder: string): { reading: Reading; diagnostics: Diagnostic[] } {
  const { files, faults } = findFiles(folder);
  const reader = new Reader(folder);
  for (const fault of faults) reader.fault(fault.code, fault.path, fault.message);
  for (const file of files) reader.read(file);
  return { reading: reader, diagnostics: reader.diagnostics };
}

class Reader implements Reading {
  readonly sources: Source[] = [];
  readonly pictures = new Set<string>();
  readonly texts = new Map<string, string>();
  readonly diagnostics: Diagnostic[] = [];

  constructor(private readonly folder: string) {}

  fault(code: Code, file: string, message: string, offset = 0): void {
    const place = placeAt(file, this.texts.get(file) ?? "", offset);
    this.diagnostics.push({
      code,
      severity: codes[code].severity,
      ...place,
      message: `${message}. ${codes[code].mend}`,
      other: undefined,
    });
  }

  read(file: FoundFile): void {
    const known = kindOf(file.path);
    const limit = known?.kind === "picture" ? pictureLimit : textLimit;
    if (known === undefined) this.fault("stray-file", file.path, "nothing reads this file");
    else if (file.size > limit)
      this.fault("too-large", file.path, `the file has ${file.size} bytes; the limit is ${limit}`);
    else if (known.kind === "picture") this.pictures.add(file.path);
    else if (!/^[a-z][a-z0-9-]*$/.test(known.id))
      this.fault("bad-id", file.path, `"${known.id}" is not a good id`);
    else this.readText(file.path, known.kind, known.id);
  }

  private readText(path: string, kind: SourceKind, id: string): void {
    const text = this.decode(path);
    if (text === undefined) return;
    this.texts.set(path, text);
    if (path.endsWith(".yaml")) this.addYaml(path, kind, id, text);
    else this.addMarkdown(path, kind, id, text);
  }

  private decode(path: string): string | undefined {
    let bytes: Buffer;
    try {
      bytes = readFileSync(join(this.folder, path));
    } catch (cause) {
      this.fault("unreadable", path, cause instanceof Error ? cause.message : String(cause));
      return undefined;
    }
    try {
      return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    } catch {
      this.fault("not-utf8", path, "the file holds bytes that are not UTF-8");
      return undefined;
    }
  }

  private addYaml(path: string, kind: SourceKind, id: string, text: string): void {
    const { yaml, fault } = readYaml(text, 0, "file-yaml");
    this.yamlFault(path, fault);
    this.sources.push({ path, kind, id, text, data: yaml, sections: [], links: [], pictures: [] });
  }

  private addMarkdown(path: string, kind: SourceKind, id: string, text: string): void {
    const split = splitFrontMatter(text);
    if ("code" in split) {
      this.fault(split.code, path, split.message);
      return;
    }
    const { yaml, fault } = readYaml(split.front, split.frontOffset, "front-matter-yaml");
    this.yamlFault(path, fault);
    const { faults, ...cut } = cutMarkdown(text, split.bodyOffset);
    for (const stepFault of faults) this.yamlFault(path, stepFault);
    this.sources.push({ path, kind, id, text, data: yaml, ...cut });
  }

  private yamlFault(path: string, fault: YamlFault | undefined): void {
    if (fault !== undefined) this.fault(fault.code, path, fault.message, fault.offset);
  }
}
