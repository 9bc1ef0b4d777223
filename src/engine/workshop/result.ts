/** What a reader of human writing gives back: the value, or what is wrong with the text, as data. */

/** One thing wrong with a text. `found` and `expected` are short English phrases that fit "found …; expected …". */
export interface Problem<Code extends string> {
  readonly code: Code;
  readonly found: string;
  readonly expected: string;
  /** The nearest thing that would have been understood, written as it should be. */
  readonly nearest: string | undefined;
}

export type Result<Value, Code extends string> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem<Code> };

export function good<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

export function bad<Code extends string>(
  code: Code,
  found: string,
  expected: string,
  nearest?: string,
): { readonly ok: false; readonly problem: Problem<Code> } {
  return { ok: false, problem: { code, found: clip(found), expected, nearest } };
}

const longestQuote = 60;

function clip(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text;
}
