/** Which file is what, by its path in the content folder. */
import type { SourceKind } from "../model/source.ts";

interface FileKind {
  readonly kind: SourceKind | "picture";
  readonly pattern: RegExp;
}

/** The first group of a pattern is the id. */
const fileKinds: readonly FileKind[] = [
  { kind: "programme", pattern: /^(programme)\.yaml$/ },
  { kind: "tool", pattern: /^tools\/([^/]+)\.md$/ },
  { kind: "substance", pattern: /^substances\/([^/]+)\.md$/ },
  { kind: "hazard", pattern: /^hazards\/([^/]+)\.md$/ },
  { kind: "module", pattern: /^modules\/([^/]+)\/module\.md$/ },
  { kind: "quiz", pattern: /^modules\/([^/]+)\/quiz\.yaml$/ },
  { kind: "revisions", pattern: /^modules\/([^/]+)\/revisions\.yaml$/ },
  { kind: "release", pattern: /^modules\/([^/]+)\/released\/[1-9]\d*-u[\w-]+\.json$/ },
  { kind: "withdrawals", pattern: /^withdrawals\/([^/]+)\.json$/ },
  { kind: "words", pattern: /^words\/([^/]+)\.po$/ },
  { kind: "picture", pattern: /^(.+\.(?:svg|png|jpe?g|webp|gif))$/i },
];

export function kindOf(path: string): { kind: SourceKind | "picture"; id: string } | undefined {
  for (const { kind, pattern } of fileKinds) {
    const match = pattern.exec(path);
    if (match !== null) return { kind, id: match[1]! };
  }
  return undefined;
}
