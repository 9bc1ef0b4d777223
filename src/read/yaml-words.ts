/** Faults of YAML in words of the trade: where the hand that wrote it went wrong, and what to do. */
import type { ErrorCode, YAMLParseError } from "yaml";
import { openBracket, openQuote } from "./yaml-open.ts";

export interface YamlWords {
  /** In the text that was parsed. */
  readonly offset: number;
  readonly found: string;
  /** What to do; undefined where only the place can be shown. */
  readonly mend: string | undefined;
}

type Explain = (text: string, at: number, said: string) => YamlWords | undefined;

const inQuotes = "Put the whole text in quotes";

const rows: Readonly<Partial<Record<ErrorCode, Explain>>> = {
  TAB_AS_INDENT: (_, offset) => ({
    offset,
    found: "the line is indented with a tab",
    mend: "Use spaces: YAML takes no tabs there.",
  }),
  DUPLICATE_KEY: (text, offset) => ({
    offset,
    found: `"${keyAt(text, offset)}" stands here a second time`,
    mend: "Keep one of the two, or give one of them another name.",
  }),
  BLOCK_AS_IMPLICIT_KEY: colonInText,
  MULTILINE_IMPLICIT_KEY: noField,
  BAD_INDENT: (text, at, said) => (said.startsWith("Flow") ? notClosed(text, at) : otherIndent(text, at)),
  MISSING_CHAR: (text, at, said) => (said.includes("quote") ? noClosingQuote(text, at) : noComma(text, at)),
  UNEXPECTED_TOKEN: (text, offset, said) =>
    said.includes("flow-") ? closesNothing(text, offset) : afterTheEnd(text, offset),
  BAD_SCALAR_START: (text, offset) => ({
    offset,
    found: `text can't begin with ${text[offset]}`,
    mend: `${inQuotes}.`,
  }),
};

/** What is wrong, or the parser's own words where no row knows. */
export function explain(error: YAMLParseError, text: string): YamlWords {
  const [at] = error.pos;
  const said = (error.message.split("\n")[0] ?? "").replace(/ at line \d+, column \d+:?$/, "");
  return rows[error.code]?.(text, at, said) ?? { offset: at, found: said, mend: undefined };
}

const lineAt = (text: string, at: number): string => /^[^\r\n]*/.exec(text.slice(at))![0];

const keyAt = (text: string, at: number): string =>
  (/^(?:"([^"]*)"|'([^']*)'|([^:\r\n]+))/.exec(text.slice(at)) ?? []).slice(1).find((one) => one) ?? "";

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** `check: look: it turns`, or a line that is indented under one that has a value already. */
function colonInText(text: string, offset: number): YamlWords | undefined {
  const line = lineAt(text, offset);
  if (/:\s/.test(line) || line.endsWith(":")) {
    const found = `the text "${shortened(line.trim())}" has a colon followed by a space, which begins a new field`;
    return { offset, found, mend: `${inQuotes}.` };
  }
  const next = /\n[ \t]*(?=[^\s])/.exec(text.slice(offset));
  if (next === null) return undefined;
  return {
    offset: offset + next.index + next[0].length,
    found: "the line is indented as if it belonged to the field above, which has a value already",
    mend: "Begin it in the same column as the field above.",
  };
}

function noField(text: string, offset: number): YamlWords {
  const line = lineAt(text, offset);
  const found = /^[\w-]+:\S/.test(line)
    ? `no space stands after the colon of "${shortened(line)}"`
    : `"${shortened(line)}" is not a field with a value`;
  return { offset, found, mend: "Write a name, a colon, a space and the value." };
}

function otherIndent(_: string, offset: number): YamlWords {
  return {
    offset,
    found: "the line is indented otherwise than the fields beside it",
    mend: "Begin it in the same column as they do.",
  };
}

const closing = new Map([
  ["[", "]"],
  ["{", "}"],
]);

function notClosed(text: string, at: number): YamlWords | undefined {
  const offset = openBracket(text, at);
  if (offset === undefined) return undefined;
  const opening = text[offset]!;
  const comment = /\s#/.test(lineAt(text, offset))
    ? " A # begins a comment: text that has one goes in quotes."
    : "";
  return {
    offset,
    found: `the bracket ${opening} is not closed`,
    mend: `Close it with ${closing.get(opening)}.${comment}`,
  };
}

function noClosingQuote(text: string, at: number): YamlWords | undefined {
  const offset = openQuote(text, at);
  if (offset === undefined) return undefined;
  return {
    offset,
    found: `the quotation mark ${text[offset]} is not closed`,
    mend: "Close it at the end of the text.",
  };
}

function noComma(_: string, offset: number): YamlWords {
  return {
    offset,
    found: "no comma stands between two things in brackets",
    mend: "Put a comma between them; text that has brackets or commas of its own goes in quotes.",
  };
}

function closesNothing(text: string, offset: number): YamlWords {
  return {
    offset,
    found: `the bracket ${text[offset]} closes nothing`,
    mend: "Take it out, or open it before.",
  };
}

function afterTheEnd(text: string, offset: number): YamlWords {
  return {
    offset,
    found: `"${shortened(lineAt(text, offset).trim())}" stands after the end of a value`,
    mend: `${inQuotes}; in double ones where it has an apostrophe.`,
  };
}
