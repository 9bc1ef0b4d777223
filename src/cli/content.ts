/** Reads and checks a content folder for the commands that need one. */
import { resolve } from "node:path";
import type { Content } from "../model/content.ts";
import { type Diagnostic, sortDiagnostics } from "../model/diagnostic.ts";
import type { Module } from "../model/module.ts";
import { read } from "../read/read.ts";
import { reportText } from "../report/text.ts";
import { validate } from "../validate/validate.ts";
import { checkWords } from "../words/check.ts";
import { BadInput, type Call, type Output } from "./command.ts";
import { noSuchModule } from "./no-such-module.ts";

export interface Checked {
  readonly content: Content;
  readonly diagnostics: readonly Diagnostic[];
  readonly texts: ReadonlyMap<string, string>;
}

/** The content folder of a call. */
export function contentFolder(call: Call): string {
  return resolve(call.text("content") ?? "content");
}

export function checkContent(folder: string): Checked {
  const { reading, diagnostics: reading_ } = read(folder);
  const { content, diagnostics } = validate(reading);
  const ofWords = checkWords(folder, reading.texts);
  const all = sortDiagnostics([...reading_, ...diagnostics, ...ofWords]);
  return { content, diagnostics: all, texts: reading.texts };
}

export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === "error");

/** A module of sound content, and the content. */
export function soundModule(call: Call, id: string): { readonly content: Content; readonly module: Module } {
  const content = soundContent(call);
  const module = content.modules.get(id);
  if (module !== undefined) return { content, module };
  throw noSuchModule(id, content.modules.keys());
}

/** Content free of errors; throws a BadInput that carries the report otherwise. */
export function soundContent(call: Call): Content {
  const { content, diagnostics, texts } = checkContent(contentFolder(call));
  if (hasErrors(diagnostics)) throw new BadInput(reportText(diagnostics, texts));
  return content;
}

const colours = { error: "31", warning: "33", quiet: "2" } as const;

/** Colours for a terminal that wants them (NO_COLOR, no-color.org). */
export function painter(stream: {
  readonly isTTY?: boolean;
}): (word: string, as: keyof typeof colours) => string {
  const wanted = stream.isTTY === true && (process.env.NO_COLOR ?? "") === "";
  return (word, as) => (wanted ? `\u001b[${colours[as]}m${word}\u001b[0m` : word);
}

/** Prints a report to standard error. */
export function printReport(
  { diagnostics, texts }: Pick<Checked, "diagnostics" | "texts">,
  output: Output,
): void {
  output.err(`${reportText(diagnostics, texts, painter(process.stderr))}\n`);
}
