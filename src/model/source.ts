/** What `read` makes of a file: its text, its YAML with a way back to offsets, its prose cut at the headings. */

export const sourceKinds = [
  "programme",
  "tool",
  "substance",
  "hazard",
  "module",
  "quiz",
  "revisions",
  "release",
  "withdrawals",
  "words",
] as const;
export type SourceKind = (typeof sourceKinds)[number];

/** Kinds of file whose fields are looked at by rules too; those of the others are looked at as they are read. */
export const ruledKinds: ReadonlySet<SourceKind> = new Set(["programme", "module", "quiz", "substance"]);

export type YamlPath = readonly (string | number)[];

/** A piece of YAML inside a source. */
export interface Yaml {
  /** Plain data, untrusted; undefined where the text is not YAML, which has been reported. */
  readonly value: unknown;
  /** Offset in the source's text where the YAML begins. */
  readonly offset: number;
  /** Offset in the source's text of the key or list item at `path`, or of the nearest thing above it that exists. */
  locate(path: YamlPath, end: "key" | "value"): number;
}

/** The parts of a Markdown token that later stages use; markdown-it's own tokens fit it. */
export interface ProseToken {
  readonly type: string;
  readonly tag: string;
  readonly nesting: number;
  readonly content: string;
  readonly info: string;
  readonly children: readonly ProseToken[] | null;
  attrGet(name: string): string | number | null;
}

export interface Link {
  readonly href: string;
  readonly offset: number;
}

export interface Picture {
  readonly src: string;
  readonly alt: string;
  readonly offset: number;
}

/** A block that is set off as code and is not read as a step. */
export interface OtherBlock {
  /** What stands behind the marks that open it. */
  readonly info: string;
  /** What it holds as YAML; undefined where it was not looked at or is none. */
  readonly value: unknown;
  /** Whether it lies inside a list or quotation, or is indented. */
  readonly isInner: boolean;
  readonly offset: number;
}

/** A heading with what stands under it; the first section of a file, before any heading, has level 0. */
export interface Section {
  readonly level: number;
  readonly title: string;
  readonly offset: number;
  /** The heading's own tokens are left out. */
  readonly prose: readonly ProseToken[];
  readonly steps: readonly Yaml[];
}

export interface Source {
  /** Relative to the content folder, with forward slashes. */
  readonly path: string;
  readonly kind: SourceKind;
  /** The id that the path gives: file name, or the module's folder, which all its releases share. */
  readonly id: string;
  readonly text: string;
  readonly data: Yaml;
  readonly sections: readonly Section[];
  readonly otherBlocks: readonly OtherBlock[];
  readonly links: readonly Link[];
  readonly pictures: readonly Picture[];
}

/** What a file is that could not be read: there, and nothing on it. */
export function blankSource(path: string, kind: SourceKind, id: string): Source {
  return {
    ...{ path, kind, id, text: "" },
    data: { value: undefined, offset: 0, locate: () => 0 },
    ...{ sections: [], otherBlocks: [], links: [], pictures: [] },
  };
}

/** All that was read: the sources that could be, and which other files (pictures) the folder holds. */
export interface Reading {
  /** When: RFC 3339 in UTC. */
  readonly at: string;
  /** False where there is no such folder, or it can't be read. */
  readonly isFolder: boolean;
  readonly sources: readonly Source[];
  /** Pictures by their path in the content folder, with what changes whenever the file does. */
  readonly pictures: ReadonlyMap<string, string>;
  /** Text of every file that was decoded, for code frames. */
  readonly texts: ReadonlyMap<string, string>;
}
