/** What of a module its author has still to write, found by the words that a starter puts there. */
import type { Module, ModuleStep } from "./module.ts";
import { remembered } from "./remembered.ts";
import type { Sheet } from "./sheet.ts";
import type { Section } from "./source.ts";
import { isUnwritten } from "./unwritten.ts";

export interface Unwritten {
  /** Names of what the module says of itself: "title", "summary", "alt text", "text". */
  readonly module: readonly string[];
  /** Of each step that has such words, names of the same kind. */
  readonly steps: ReadonlyMap<ModuleStep, readonly string[]>;
}

/** O(length of the module's text). */
export const unwrittenIn = remembered(
  ({ title, summary, figure, sections, procedure }: Module): Unwritten => {
    const own = sections.filter(({ steps }) => steps.length === 0);
    const steps = procedure.steps.map((step) => [step, unwrittenOf(wordsOf(step))] as const);
    return {
      module: unwrittenOf({
        title: [title],
        summary: [summary],
        "alt text": figure === undefined ? [] : [figure.alt],
        text: own.flatMap((section) => [section.title, ...textsOf(section)]),
      }),
      steps: new Map(steps.filter(([, left]) => left.length > 0)),
    };
  },
);

export function isDraft(module: Module): boolean {
  const left = unwrittenIn(module);
  return left.module.length > 0 || left.steps.size > 0;
}

const wordsOf = ({ title, figure, section }: ModuleStep) => ({
  title: [title],
  "alt text": figure === undefined ? [] : [figure.alt],
  text: textsOf(section),
});

const unwrittenOf = (words: Readonly<Record<string, readonly string[]>>): string[] =>
  Object.entries(words).flatMap(([name, texts]) => (texts.some(isUnwritten) ? [name] : []));

/** Of a sheet, the fields in which a starter's words still stand, and "text" where they do below them. O(length). */
export function unwrittenOfSheet({ sections, ...fields }: Sheet): string[] {
  const words = Object.entries(fields).map(([name, value]) => [name, [value].flat().filter(isText)]);
  return unwrittenOf({ ...Object.fromEntries(words), text: sections.flatMap(textsOf) });
}

const isText = (value: unknown): value is string => typeof value === "string";

const textsOf = ({ prose }: Section): string[] =>
  prose.flatMap(({ type, content }) => (type === "inline" ? [content] : []));
