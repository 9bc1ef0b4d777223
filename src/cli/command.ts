/** What a command is, and how its arguments are read. */
import { parseArgs } from "node:util";
import { didYouMean } from "./did-you-mean.ts";

/** Where a command prints; passed in, so that tests can listen. */
export interface Output {
  out(text: string): void;
  err(text: string): void;
}

/** 0 done, 1 the content or the file has errors, 2 the call is wrong. */
export type ExitCode = 0 | 1 | 2;

interface OptionSpec {
  readonly type: "string" | "boolean";
  /** For the help text: what the value is, where it has one. */
  readonly value?: string;
  readonly help: string;
}

export interface Command {
  readonly name: string;
  readonly summary: string;
  /** What follows the name, for the help text. */
  readonly usage: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
  /** How many words without an option may follow the name; none where it says nothing. */
  readonly words?: number;
  /** What they are likely to be where there are more; undefined where the command can't say. */
  readonly tooMany?: (words: readonly string[]) => string | undefined;
  /** What the help text says below the options. */
  readonly more?: () => string;
  run(call: Call, output: Output): Promise<ExitCode> | ExitCode;
}

export interface Call {
  readonly positionals: readonly string[];
  text(option: string): string | undefined;
  flag(option: string): boolean;
}

/** The call is wrong: its message says how, and the command ends with 2. */
export class WrongCall extends Error {}

/** The content or a file is wrong: the command ends with 1. */
export class BadInput extends Error {}

export const contentOption = {
  type: "string",
  value: "DIR",
  help: "the content folder (default: content)",
} as const;
export const jsonOption = {
  type: "boolean",
  help: "print one JSON value on standard output and nothing else",
} as const;

/** Reads the arguments of a command. Throws a WrongCall for what it does not know. */
export function readCall(command: Command, args: readonly string[]): Call {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, { type }]) => [name, { type }]),
  );
  const spelled = args.map(minusSpelled);
  refuseValueless(command, spelled);
  try {
    const { values, positionals } = parseArgs({
      args: spelled,
      options,
      allowPositionals: true,
      strict: true,
    });
    const [extra] = positionals.slice(command.words ?? 0);
    if (extra !== undefined) throw new WrongCall(extraWords(command, extra, command.tooMany?.(positionals)));
    const value = (name: string): unknown => values[name];
    return {
      positionals,
      text: (name) => (typeof value(name) === "string" ? (value(name) as string) : undefined),
      flag: (name) => value(name) === true,
    };
  } catch (cause) {
    if (cause instanceof WrongCall) throw cause;
    const [, unknown] = /^Unknown option '(-[^']+)'/.exec(String((cause as Error).message)) ?? [];
    const known = Object.keys(options).map((name) => `--${name}`);
    const meant = unknown === undefined ? "" : didYouMean(unknown, known);
    throw new WrongCall(`${firstSentence(cause)}${meant} See: benchwright help ${command.name}`);
  }
}

/** A value may begin with a minus: no option does so with a digit, and as a sign of its own it is not taken for one. */
function minusSpelled(word: string): string {
  return word.replace(/^-(?=\s*[\d.,¼-¾⅐-⅞])/, "−");
}

/**
 * Refuses an option whose value is missing, or has an option in its place: of a value that begins with a minus, parseArgs takes none but
 * a lone one, unless it is joined to the option by "=".
 */
function refuseValueless({ name, options }: Command, args: readonly string[]): void {
  const end = args.indexOf("--");
  for (const [index, word] of args.slice(0, end < 0 ? undefined : end).entries()) {
    const spec = optionIn(word, options);
    const next = args[index + 1];
    if (spec?.type !== "string" || word.includes("=") || (next !== undefined && !/^-./s.test(next))) continue;
    throw new WrongCall(
      `${word} needs a value: ${word} ${spec.value ?? "VALUE"}. ${inItsPlace(word, next, options)} See: benchwright help ${name}`,
    );
  }
}

function inItsPlace(word: string, next: string | undefined, options: Command["options"]): string {
  if (next === undefined) return "Nothing follows it.";
  if (next === "--" || optionIn(next, options) !== undefined) return `"${next}" follows it.`;
  return `"${next}" follows it; a value that begins with a minus is written ${word}=${next}.`;
}

function optionIn(word: string, options: Command["options"]): OptionSpec | undefined {
  const option = /^--([^=]+)/.exec(word)?.[1];
  return option !== undefined && Object.hasOwn(options, option) ? options[option] : undefined;
}

/** What a folder or an id without its option is likely to have been meant for. */
const oftenBare: ReadonlySet<string | undefined> = new Set(["DIR", "ID"]);

function extraWords({ name, options }: Command, extra: string, likely: string | undefined): string {
  const meant = Object.entries(options)
    .filter(([, { value }]) => oftenBare.has(value))
    .map(([option]) => `--${option} ${extra}`);
  const says = likely ?? `benchwright ${name} takes no "${extra}".`;
  const hint = meant.length === 0 ? "" : ` Did you mean ${meant.join(" or ")}?`;
  return `${says}${hint}${likely === undefined ? ` See: benchwright help ${name}` : ""}`;
}

function firstSentence(cause: unknown): string {
  const message = cause instanceof Error ? cause.message : String(cause);
  return `${(message.split(". ")[0] ?? message).replace(/\.$/, "")}.`;
}

/** One JSON value and nothing else. */
export function printJson(output: Output, value: unknown): void {
  output.out(`${JSON.stringify(value, undefined, 2)}\n`);
}
