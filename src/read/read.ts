/** Files to sources: found, decoded, split into YAML and prose. Faults of the text itself are found here. */
import { isUtf8 } from "node:buffer";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Code } from "../model/codes.ts";
import { codes } from "../model/codes.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { idPattern } from "../model/id.ts";
import { placeAt } from "../model/place.ts";
import { blankSource, type Reading, ruledKinds, type Source, type SourceKind } from "../model/source.ts";
import { emptyModules, type FoundFile, findFiles } from "./files.ts";
import { splitFrontMatter } from "./front-matter.ts";
import { kindOf } from "./kinds.ts";
import { cutMarkdown } from "./markdown.ts";
import { readYaml, type YamlFault } from "./yaml.ts";

/** Limits in bytes. A module of 900 words is some 10 kB. */
export const textLimit = 1024 * 1024;
export const pictureLimit = 10 * 1024 * 1024;

export interface ReadOptions {
  /** Which texts are opened; all, where nothing is said. The others are known by name only. */
  readonly wants?: (path: string) => boolean;
  /** What earlier readings of the same folder made of its files; kept up to date. */
  readonly memory?: ReadMemory;
  /** The day by which what lapses has lapsed. */
  readonly now?: Date;
}

/** By path: a text as it was read, with what the file looked like then. */
export type ReadMemory = Map<string, { readonly file: FoundFile; readonly reader: TextReader }>;

/**
 * Reads a content folder. Never throws on what it finds there: every fault is a diagnostic, and what could be read is
 * given. A file that has not changed since the memory was made is the same `Source` object again.
 */
export function read(
  folder: string,
  { wants = () => true, memory = new Map(), now = new Date() }: ReadOptions = {},
): { reading: Reading; diagnostics: Diagnostic[] } {
  const found = findFiles(folder);
  const { files, faults } = found;
  const reading = {
    at: now.toISOString(),
    isFolder: !faults.some(({ code }) => code === "no-content"),
    sources: [] as Source[],
    pictures: new Map<string, string>(),
    texts: new Map<string, string>(),
  };
  const diagnostics = [...faults, ...emptyModules(found)].map(({ code, path, message }) =>
    faultAt(code, path, "", message),
  );
  for (const file of files) {
    const known = kindOf(file.path);
    const fault = outwardFault(file, known);
    if (fault !== undefined) {
      diagnostics.push(faultAt(fault.code, file.path, "", fault.message));
      if (known !== undefined && known.kind !== "picture")
        reading.sources.push(blankSource(file.path, known.kind, known.id));
    } else if (known!.kind === "picture") reading.pictures.set(file.path, `${file.size} ${file.changed}`);
    else if (wants(file.path)) {
      const { text, source, diagnostics: found } = readText(folder, file, known!.kind, known!.id, memory);
      if (text !== undefined) reading.texts.set(file.path, text);
      reading.sources.push(source);
      diagnostics.push(...found);
    }
  }
  return { reading, diagnostics };
}

/** What can be wrong with a file that has not been opened. */
function outwardFault(
  { size }: FoundFile,
  known: ReturnType<typeof kindOf>,
): { code: Code; message: string } | undefined {
  if (known === undefined) return { code: "stray-file", message: "nothing reads this file" };
  const limit = known.kind === "picture" ? pictureLimit : textLimit;
  if (size > limit)
    return { code: "too-large", message: `the file has ${size} bytes; the limit is ${limit}` };
  if (known.kind === "picture" || idPattern.test(known.id)) return undefined;
  return { code: "bad-id", message: `"${known.id}" is not a good id` };
}

function readText(
  folder: string,
  file: FoundFile,
  kind: SourceKind,
  id: string,
  memory: ReadMemory,
): TextReader {
  const before = memory.get(file.path);
  if (before?.file.size === file.size && before.file.changed === file.changed) return before.reader;
  const reader = new TextReader(folder, file.path, kind, id);
  memory.set(file.path, { file, reader });
  return reader;
}

function faultAt(
  code: Code,
  file: string,
  text: string,
  message: string,
  offset = 0,
  mend: string = codes[code].mend,
): Diagnostic {
  const { severity } = codes[code];
  return { code, severity, ...placeAt(file, text, offset), message: `${message}. ${mend}`, other: undefined };
}

const utf8 = new TextDecoder("utf-8");

/** Reads one text: decodes it, splits it, and keeps the faults. */
class TextReader {
  readonly diagnostics: Diagnostic[] = [];
  readonly text: string | undefined;
  /** Blank where nothing could be made of the text. */
  readonly source: Source;

  constructor(
    folder: string,
    private readonly path: string,
    private readonly kind: SourceKind,
    private readonly id: string,
  ) {
    this.text = this.decode(join(folder, path));
    if (this.text === undefined) this.source = this.blank();
    else if (/\.(json|po)$/.test(path)) this.source = { ...this.blank(), text: this.text };
    else this.source = path.endsWith(".yaml") ? this.ofYaml(this.text) : this.ofMarkdown(this.text);
  }

  private blank(): Source {
    return blankSource(this.path, this.kind, this.id);
  }

  private fault(code: Code, message: string, offset = 0, mend?: string): void {
    const diagnostic = faultAt(code, this.path, this.text ?? "", message, offset, mend);
    this.diagnostics.push({ ...diagnostic, holdsUp: ruledKinds.has(this.kind) });
  }

  private decode(file: string): string | undefined {
    let bytes: Buffer;
    try {
      bytes = readFileSync(file);
    } catch (cause) {
      this.fault("unreadable", cause instanceof Error ? cause.message : String(cause));
      return undefined;
    }
    if (isUtf8(bytes)) return utf8.decode(bytes);
    this.fault("not-utf8", "the file holds bytes that are not UTF-8");
    return undefined;
  }

  private ofYaml(text: string): Source {
    const { yaml, fault } = readYaml(text, 0, "file-yaml");
    this.yamlFault(fault);
    return { ...this.blank(), text, data: yaml };
  }

  private ofMarkdown(text: string): Source {
    const split = splitFrontMatter(text);
    if ("code" in split) {
      this.fault(split.code, split.message);
      return this.blank();
    }
    const { yaml, fault } = readYaml(split.front, split.frontOffset, "front-matter-yaml");
    this.yamlFault(fault);
    const { faults, ...cut } = cutMarkdown(text, split.bodyOffset);
    for (const stepFault of faults) this.yamlFault(stepFault);
    const { path, kind, id } = this;
    return { path, kind, id, text, data: yaml, ...cut };
  }

  private yamlFault(fault: YamlFault | undefined): void {
    if (fault !== undefined) this.fault(fault.code, fault.message, fault.offset, fault.mend);
  }
}
