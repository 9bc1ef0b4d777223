/** What `read` makes of a file: its text, its YAML with a way back to offsets, its prose cut at the headings. */

export const sourceKinds = ["programme", "tool", "substance", "hazard", "module", "quiz"] as const;
export type SourceKind = (typeof sourceKinds)[number];

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
  /** The id that the path gives: file name, or the module's folder. */
  readonly id: string;
  readonly text: string;
  readonly data: Yaml;
  readonly sections: readonly Section[];
  readonly links: readonly Link[];
  readonly pictures: readonly Picture[];
}

/** All that was read: the sources that could be, and which other files (pictures) the folder holds. */
export interface Reading {
  readonly sources: readonly Source[];
  /** Pictures by their path in the content folder, with what changes whenever the file does. */
  readonly pictures: ReadonlyMap<string, string>;
  /** Text of every file that was decoded, for code frames. */
  readonly texts: ReadonlyMap<string, string>;
}
