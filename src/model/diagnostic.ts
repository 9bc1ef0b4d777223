import type { Code, Severity } from "./codes.ts";

/** A place in a content file. Lines and columns count from 1; columns in UTF-16 units. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** One fault of the content: what was found, what was expected and what to do, at a place. */
export interface Diagnostic extends Place {
  readonly code: Code;
  readonly severity: Severity;
  readonly message: string;
  /** The other place, where the fault has two ends: the first of two equal ids, the step that a cycle returns to. */
  readonly other: (Place & { readonly message: string }) | undefined;
  /** True where rules can't look at the file until this is mended, so that more may come to light. */
  readonly holdsUp?: boolean;
}

/** Sorts by file, line, column, code, so that output does not depend on the order of the rules. */
export function sortDiagnostics(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return [...diagnostics].sort(
    (a, b) =>
      compare(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compare(a.code, b.code) ||
      compare(a.message, b.message),
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
